package org.crosshead.platform.security;

import org.crosshead.platform.account.PostsOfToday;
import org.crosshead.platform.account.TooManyAttemptsException;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.security.config.Customizer;
import org.springframework.security.config.annotation.method.configuration.EnableMethodSecurity;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.crypto.factory.PasswordEncoderFactories;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.access.intercept.AuthorizationFilter;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;
import org.springframework.util.unit.DataSize;

/** Log-in by a form, the table of endpoints, and the headers that hold a browser to this service's own files. */
@Configuration(proxyBeanMethods = false)
@EnableMethodSecurity
class SecurityConfiguration {

    static final String CONTENT_SECURITY_POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; "
            + "img-src 'self' data:; connect-src 'self'; form-action 'self'; frame-ancestors 'none'; "
            + "base-uri 'none'; manifest-src 'self'; worker-src 'self'";

    @Bean
    PasswordEncoder passwordEncoder() {
        return PasswordEncoderFactories.createDelegatingPasswordEncoder();
    }

    @Bean
    SecurityFilterChain endpoints(
            HttpSecurity http,
            PostsOfToday posts,
            @Value("${spring.servlet.multipart.max-request-size}") DataSize requestSizeMax) {
        return http.authorizeHttpRequests(requests -> requests.anyRequest().access(new EndpointDecision()))
                .formLogin(form -> form.loginPage("/login")
                        .failureHandler((request, response, failure) -> response.sendRedirect(request.getContextPath()
                                + (failure instanceof TooManyAttemptsException
                                        ? "/login?throttled"
                                        : "/login?failed"))))
                .logout(logout -> logout.logoutUrl("/logout").logoutSuccessUrl("/login?left"))
                .headers(headers -> headers.contentSecurityPolicy(
                                policy -> policy.policyDirectives(CONTENT_SECURITY_POLICY))
                        .referrerPolicy(policy -> policy.policy(ReferrerPolicy.SAME_ORIGIN)))
                .csrf(Customizer.withDefaults())
                .exceptionHandling(refusals -> refusals.accessDeniedHandler(new RefusalHandler(requestSizeMax)))
                .addFilterBefore(new FreshLogInFilter(posts), AuthorizationFilter.class)
                .build();
    }
}
