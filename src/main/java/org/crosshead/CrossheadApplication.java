package org.crosshead;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/** Starts the service. */
@SpringBootApplication
public class CrossheadApplication {

    public static void main(String[] args) {
        SpringApplication.run(CrossheadApplication.class, args);
    }
}
