package org.crosshead.briefing;

import jakarta.annotation.PreDestroy;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.crosshead.briefing.Progress.Part;
import org.crosshead.platform.NotFoundException;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.security.concurrent.DelegatingSecurityContextRunnable;
import org.springframework.stereotype.Service;

/**
 * Prepares briefings while whoever asked looks on or goes away. At most {@value #AT_ONCE} are made at once; a train whose briefing is in
 * the making is not begun twice. What has ended is kept until it has been looked at or the train is begun anew; a restart forgets it.
 */
@Service
public class Preparations {

    private static final int AT_ONCE = 2;
    private static final Logger LOG = LoggerFactory.getLogger(Preparations.class);

    private final Briefings briefings;
    private final ExecutorService workers = Executors.newFixedThreadPool(AT_ONCE);
    private final Map<Long, Work> byTrain = new ConcurrentHashMap<>();

    Preparations(Briefings briefings) {
        this.briefings = briefings;
    }

    /**
     * How far one has come.
     *
     * @param part what is being done, or was done last
     * @param briefingId the briefing, once it is there
     * @param refused why there is none, as the code of a refusal; {@code failed} where nobody foresaw it
     */
    public record Standing(
            Part part, @Nullable Long briefingId, @Nullable String refused) {

        public boolean ended() {
            return briefingId != null || refused != null;
        }
    }

    private static final class Work implements Progress {

        private final CountDownLatch done = new CountDownLatch(1);
        private volatile Standing standing = new Standing(Part.WAITS, null, null);

        @Override
        public void begins(Part part) {
            standing = new Standing(part, null, null);
        }

        void ends(@Nullable Long briefingId, @Nullable String refused) {
            standing = new Standing(standing.part(), briefingId, refused);
            done.countDown();
        }
    }

    /** Begins with a train's briefing, unless it is in the making. */
    @PreAuthorize("hasRole('INSPECTOR')")
    public void begin(long trainId) {
        byTrain.compute(trainId, (id, there) -> {
            if (there != null && !there.standing.ended()) {
                return there;
            }
            Work work = new Work();
            workers.execute(new DelegatingSecurityContextRunnable(() -> make(trainId, work)));
            return work;
        });
    }

    private void make(long trainId, Work work) {
        try {
            work.ends(briefings.prepare(trainId, work), null);
        } catch (BriefingRefusedException ex) {
            work.ends(null, ex.code());
        } catch (NotFoundException ex) {
            work.ends(null, "train-gone");
        } catch (RuntimeException | Error ex) {
            LOG.error("The briefing of train {} could not be prepared", trainId, ex);
            work.ends(null, "failed");
        }
    }

    /**
     * Returns how far a train's briefing has come, after waiting for its end at most so long; nothing where none is in the making. What
     * has ended is told once.
     */
    @PreAuthorize("hasRole('INSPECTOR')")
    public Optional<Standing> await(long trainId, Duration atMost) {
        Work work = byTrain.get(trainId);
        if (work == null) {
            return Optional.empty();
        }
        try {
            if (work.done.await(atMost.toMillis(), TimeUnit.MILLISECONDS)) {
                byTrain.remove(trainId, work);
            }
        } catch (InterruptedException ex) {
            Thread.currentThread().interrupt();
        }
        return Optional.of(work.standing);
    }

    @PreDestroy
    void stop() {
        workers.shutdownNow();
    }
}
