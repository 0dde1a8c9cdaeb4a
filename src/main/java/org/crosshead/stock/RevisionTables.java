package org.crosshead.stock;

/** Names of the tables of one kind of stock. */
enum RevisionTables {
    LOCOMOTIVE_CLASS("locomotive_class", "class_figure"),
    ENGINE("engine", "engine_figure"),
    VEHICLE_KIND("vehicle_kind", "vehicle_figure"),
    FORMATION("formation", "");

    final String head;
    final String revision;
    /** Empty where there are none. */
    final String figures;

    RevisionTables(String head, String figures) {
        this.head = head;
        this.revision = head + "_revision";
        this.figures = figures;
    }
}
