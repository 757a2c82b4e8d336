package org.skewback.kernel.wire;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/** Signs the four JSON parts of a message with HMAC-SHA256 (RFC 2104, FIPS 180-4). */
public final class Signature {

    private static final String ALGORITHM = "HmacSHA256";

    private final byte[] key;

    /**
     * Takes the key.
     *
     * @param key key of the connection file; empty means that messages carry an empty signature and
     *     none is checked
     */
    public Signature(String key) {
        this.key = key.getBytes(StandardCharsets.UTF_8);
    }

    /**
     * Computes the signature.
     *
     * @param parts header, parent header, metadata and content as sent
     * @return hexadecimal digits in lower case; empty without a key
     */
    public byte[] sign(List<byte[]> parts) {
        if (key.length == 0) {
            return new byte[0];
        }
        try {
            Mac mac = Mac.getInstance(ALGORITHM);
            mac.init(new SecretKeySpec(key, ALGORITHM));
            for (byte[] part : parts) {
                mac.update(part);
            }
            return HexFormat.of().formatHex(mac.doFinal()).getBytes(StandardCharsets.US_ASCII);
        } catch (GeneralSecurityException e) {
            // Every Java platform must have HmacSHA256 (javax.crypto.Mac, class description).
            throw new IllegalStateException("this Java has no " + ALGORITHM, e);
        }
    }

    /**
     * Compares a signature with the one computed, in a time that tells nothing of where they differ.
     *
     * @param signature signature received
     * @param parts header, parent header, metadata and content as received
     * @return whether the signature is right, or no key is used
     */
    public boolean accepts(byte[] signature, List<byte[]> parts) {
        return key.length == 0 || MessageDigest.isEqual(signature, sign(parts));
    }
}
