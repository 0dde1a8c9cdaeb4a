package org.crosshead.platform.web;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Asks the running service as a browser would: keeps cookies, follows no redirect by itself, sends forms with their token. */
final class Browser {

    private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"");

    private final HttpClient client =
            HttpClient.newBuilder().cookieHandler(new CookieManager()).build();
    private final String base;

    Browser(int port) {
        this.base = "http://127.0.0.1:" + port;
    }

    HttpResponse<String> get(String path, String... headers) throws IOException, InterruptedException {
        HttpRequest.Builder request =
                HttpRequest.newBuilder(URI.create(base + path)).header("Accept", "text/html");
        if (headers.length > 0) {
            request.headers(headers);
        }
        return client.send(request.build(), BodyHandlers.ofString());
    }

    HttpResponse<String> postWithoutToken(String path, Map<String, String> fields)
            throws IOException, InterruptedException {
        String body = fields.entrySet().stream()
                .map(field -> field.getKey() + "=" + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
        HttpRequest request = HttpRequest.newBuilder(URI.create(base + path))
                .header("Accept", "text/html")
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString(body))
                .build();
        return client.send(request, BodyHandlers.ofString());
    }

    /** Sends a file by the form of the page. */
    HttpResponse<String> upload(String page, String path, String content) throws IOException, InterruptedException {
        String form =
                part("_csrf", token(get(page).body())) + part("file\"; filename=\"a.csv", content) + "--mark--\r\n";
        HttpRequest request = HttpRequest.newBuilder(URI.create(base + path))
                .header("Accept", "text/html")
                .header("Content-Type", "multipart/form-data; boundary=mark")
                .POST(BodyPublishers.ofString(form))
                .build();
        return client.send(request, BodyHandlers.ofString());
    }

    private static String part(String name, String content) {
        return "--mark\r\nContent-Disposition: form-data; name=\"" + name + "\"\r\n\r\n" + content + "\r\n";
    }

    /** Opens the page with the form, then sends the form to {@code path}. */
    HttpResponse<String> post(String page, String path, Map<String, String> fields)
            throws IOException, InterruptedException {
        String token = token(get(page).body());
        Map<String, String> all = new java.util.TreeMap<>(fields);
        all.put("_csrf", token);
        return postWithoutToken(path, all);
    }

    HttpResponse<String> logIn(String subject, String password) throws IOException, InterruptedException {
        return post("/login", "/login", Map.of("username", subject, "password", password));
    }

    private static String token(String page) {
        Matcher matcher = TOKEN.matcher(page);
        if (!matcher.find()) {
            throw new AssertionError("no form token in: " + page);
        }
        return matcher.group(1);
    }

    static String location(HttpResponse<String> response) {
        return response.headers()
                .firstValue("Location")
                .map(where -> where.replaceFirst("^http://[^/]+", ""))
                .orElse("");
    }
}
