package org.crosshead.competence;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.crosshead.platform.CurrentActor;
import org.crosshead.platform.Journal;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Puts versions of the policy on what people know forward, and has them approved by somebody else. A version is never changed. */
@Service
public class KnowledgePolicyDesk {

    private static final String TO_COME = "-";

    private final KnowledgePolicies policies;
    private final Journal journal;
    private final CurrentActor actor;
    private final Clock clock;
    private final ZoneId zone;
    private final ApplicationEventPublisher events;

    KnowledgePolicyDesk(
            KnowledgePolicies policies,
            Journal journal,
            CurrentActor actor,
            Clock clock,
            ZoneId zone,
            ApplicationEventPublisher events) {
        this.events = events;
        this.policies = policies;
        this.journal = journal;
        this.actor = actor;
        this.clock = clock;
        this.zone = zone;
    }

    public List<KnowledgePolicy> all() {
        return policies.all();
    }

    /**
     * Puts a version forward, owned by whoever acts; its number and owner are given here.
     *
     * @throws ActRefusedException if it is laxer than the law, cannot be, or would hold for days that have passed
     */
    @Transactional
    @PreAuthorize("hasRole('MANAGER')")
    public void propose(KnowledgePolicy draft) {
        if (draft.validFrom().isBefore(LocalDate.now(clock.withZone(zone)))) {
            throw new ActRefusedException("policy-past");
        }
        int version = policies.all().get(0).version() + 1;
        String owner = actor.get().name();
        draft.numbered(version, owner, TO_COME).refusal().ifPresent(why -> {
            throw new ActRefusedException("policy-" + why);
        });
        policies.insert(draft.numbered(version, owner, ""));
        journal.write("policy.proposed", "knowledge-policy", version, owner);
    }

    /**
     * Approves a version.
     *
     * @throws ActRefusedException if whoever acts owns it, or it is approved already
     */
    @Transactional
    @PreAuthorize("hasAnyRole('MANAGER', 'ASSESSOR', 'INSPECTOR')")
    public void approve(int version) {
        String approver = actor.get().name();
        KnowledgePolicy policy = policies.all().stream()
                .filter(one -> one.version() == version)
                .findFirst()
                .orElseThrow(() -> new ActRefusedException("policy-gone"));
        if (policy.owner().equals(approver)) {
            throw new ActRefusedException("policy-approved-by-owner");
        }
        if (!policies.approve(version, approver)) {
            throw new ActRefusedException("policy-gone");
        }
        journal.write("policy.approved", "knowledge-policy", version, approver);
        events.publishEvent(new PolicyApproved(version, policy.validFrom()));
    }
}
