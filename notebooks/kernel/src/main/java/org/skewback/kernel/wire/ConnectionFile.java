package org.skewback.kernel.wire;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Where a kernel listens and the key its messages are signed with.
 *
 * @param ip address of the interface, such as {@code 127.0.0.1}
 * @param shellPort port of the shell channel, 1 to 65 535
 * @param controlPort port of the control channel
 * @param stdinPort port of the stdin channel
 * @param iopubPort port of the publishing channel
 * @param heartbeatPort port of the heartbeat
 * @param key key of the signature; empty where messages are not signed
 * @see <a href="https://jupyter-client.readthedocs.io/en/stable/kernels.html#connection-files">Jupyter
 *     client documentation, "Connection files"</a>
 */
public record ConnectionFile(
        String ip,
        int shellPort,
        int controlPort,
        int stdinPort,
        int iopubPort,
        int heartbeatPort,
        String key) {

    private static final String SCHEME = "hmac-sha256";

    /**
     * Makes a connection on the loopback interface with a random key and five ports that are free
     * now.
     *
     * @return the connection
     * @throws IOException if no port is free
     */
    public static ConnectionFile onLoopback() throws IOException {
        List<ServerSocket> held = new ArrayList<>();
        try {
            int[] ports = new int[5];
            for (int i = 0; i < ports.length; i++) {
                ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress());
                held.add(socket);
                ports[i] = socket.getLocalPort();
            }
            byte[] key = new byte[32];
            new SecureRandom().nextBytes(key);
            return new ConnectionFile(
                    "127.0.0.1",
                    ports[0],
                    ports[1],
                    ports[2],
                    ports[3],
                    ports[4],
                    HexFormat.of().formatHex(key));
        } finally {
            for (ServerSocket socket : held) {
                socket.close();
            }
        }
    }

    /**
     * Reads a connection file.
     *
     * @param file the file
     * @return its content
     * @throws IOException if the file cannot be read, lacks a field, or asks for a transport or a
     *     signature other than {@code tcp} and {@code hmac-sha256}
     */
    public static ConnectionFile read(Path file) throws IOException {
        Map<String, String> json = fields(file);
        String transport = json.getOrDefault("transport", "tcp");
        if (!transport.equals("tcp")) {
            throw new IOException(
                    "connection file " + file + ": transport is " + transport + ", must be tcp");
        }
        String key = json.getOrDefault("key", "");
        String scheme = json.getOrDefault("signature_scheme", SCHEME);
        if (!key.isEmpty() && !scheme.equals(SCHEME)) {
            throw new IOException(
                    "connection file "
                            + file
                            + ": signature_scheme is "
                            + scheme
                            + ", must be "
                            + SCHEME);
        }
        return new ConnectionFile(
                json.getOrDefault("ip", "127.0.0.1"),
                port(file, json, "shell_port"),
                port(file, json, "control_port"),
                port(file, json, "stdin_port"),
                port(file, json, "iopub_port"),
                port(file, json, "hb_port"),
                key);
    }

    /**
     * The plain values of the file by name; a null is no value. Nothing of a kernel can begin before this is known, and to
     * load what makes trees of JSON would take a good part of its start; the sockets load it beside
     * the compiler.
     */
    private static Map<String, String> fields(Path file) throws IOException {
        Map<String, String> fields = new HashMap<>();
        try (JsonParser parser = new JsonFactory().createParser(Files.readAllBytes(file))) {
            if (parser.nextToken() != JsonToken.START_OBJECT) {
                throw new IOException("connection file " + file + " is not a JSON object");
            }
            for (String name = parser.nextFieldName();
                    name != null;
                    name = parser.nextFieldName()) {
                JsonToken token = parser.nextToken();
                if (token.isScalarValue() && token != JsonToken.VALUE_NULL) {
                    fields.put(name, parser.getText());
                } else {
                    parser.skipChildren();
                }
            }
        }
        return fields;
    }

    /**
     * Writes the connection file, readable by its owner only where the file system knows owners.
     *
     * @param file the file, must not exist
     * @throws IOException if it cannot be written
     */
    public void write(Path file) throws IOException {
        ObjectMapper mapper = new ObjectMapper();
        ObjectNode json = mapper.createObjectNode();
        json.put("transport", "tcp");
        json.put("ip", ip);
        json.put("shell_port", shellPort);
        json.put("control_port", controlPort);
        json.put("stdin_port", stdinPort);
        json.put("iopub_port", iopubPort);
        json.put("hb_port", heartbeatPort);
        json.put("signature_scheme", SCHEME);
        json.put("key", key);
        if (file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            Files.createFile(
                    file,
                    PosixFilePermissions.asFileAttribute(
                            PosixFilePermissions.fromString("rw-------")));
        } else {
            Files.createFile(file);
        }
        Files.write(file, mapper.writerWithDefaultPrettyPrinter().writeValueAsBytes(json));
    }

    /**
     * Gives all ports that belong to this connection, whether anybody listens on them yet or not.
     *
     * @return the five ports
     */
    public Set<Integer> ports() {
        // Not Set.of, which refuses the same port twice; that is for whoever listens to refuse.
        return new HashSet<>(List.of(shellPort, controlPort, stdinPort, iopubPort, heartbeatPort));
    }

    /**
     * Gives the ZeroMQ address of a port.
     *
     * @param port the port
     * @return the address, such as {@code tcp://127.0.0.1:49152}
     */
    public String address(int port) {
        return "tcp://" + ip + ":" + port;
    }

    private static int port(Path file, Map<String, String> json, String field) throws IOException {
        String written = json.get(field);
        int port;
        try {
            port = written == null ? 0 : Integer.parseInt(written);
        } catch (NumberFormatException e) {
            port = 0;
        }
        if (port < 1 || port > 65_535) {
            throw new IOException(
                    "connection file "
                            + file
                            + ": "
                            + field
                            + " is "
                            + (written == null ? "missing" : written)
                            + ", must be 1 to 65535");
        }
        return port;
    }
}
