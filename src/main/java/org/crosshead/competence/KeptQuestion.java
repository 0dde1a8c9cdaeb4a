package org.crosshead.competence;

/** What a decision rested on, as it is stored. */
record KeptQuestion(PermitRules.Asked asked) implements Decision.Kept {

    @Override
    public Permit again() {
        return PermitRules.decide(asked);
    }
}
