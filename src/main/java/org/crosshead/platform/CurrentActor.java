package org.crosshead.platform;

import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Who is acting in the present request or job. */
@FunctionalInterface
public interface CurrentActor {

    Actor get();

    /**
     * A person logged in, or a job of the service itself.
     *
     * @param accountId the log-in, or null for a job
     * @param personId the person whose log-in it is, or null if it belongs to nobody in the list of people
     * @param posts posts held today, in capitals, for example {@code DRIVER}
     */
    record Actor(@Nullable Long accountId, @Nullable Long personId, String name, Set<String> posts) {

        public Actor {
            posts = Set.copyOf(posts);
        }

        /** A job of the service, or somebody of whom only the name matters. */
        public Actor(String name) {
            this(null, null, name, Set.of());
        }

        public boolean holds(String post) {
            return posts.contains(post);
        }
    }
}
