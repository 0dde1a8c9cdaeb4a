package org.crosshead.route.web;

/** What is wrong, in words, beside a field of a form. */
record FormProblem(String field, String text) {}
