package org.skewback.desk.checking;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.MessageDigest;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.Signature;
import java.security.spec.PKCS8EncodedKeySpec;
import java.security.spec.X509EncodedKeySpec;
import java.util.Base64;
import java.util.HexFormat;
import org.skewback.desk.Problem;

/** Ed25519 keys and signatures (RFC 8032), as the Java platform has them. */
public final class Keys {

    private static final String ALGORITHM = "Ed25519";
    private static final String PRIVATE = "PRIVATE KEY";
    private static final int SHOWN = 16;

    private Keys() {}

    /**
     * Makes a pair of keys.
     *
     * @return a fresh pair
     */
    public static KeyPair fresh() {
        try {
            return KeyPairGenerator.getInstance(ALGORITHM).generateKeyPair();
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("this Java has no " + ALGORITHM, e);
        }
    }

    /**
     * Writes a private key (PKCS #8, RFC 5958, as text by RFC 7468).
     *
     * @param key the key
     * @return its text
     */
    public static String text(PrivateKey key) {
        return "-----BEGIN "
                + PRIVATE
                + "-----\n"
                + Base64.getMimeEncoder(64, new byte[] {'\n'}).encodeToString(key.getEncoded())
                + "\n-----END "
                + PRIVATE
                + "-----\n";
    }

    /**
     * Writes a public key.
     *
     * @param key the key
     * @return base64 of its X.509 form, on one line
     */
    public static String text(PublicKey key) {
        return Base64.getEncoder().encodeToString(key.getEncoded());
    }

    /**
     * Reads a private key.
     *
     * @param text what {@link #text(PrivateKey)} wrote
     * @return the key
     * @throws Problem when it is none
     */
    public static PrivateKey privateKey(String text) throws Problem {
        String bare =
                text.replace("-----BEGIN " + PRIVATE + "-----", "")
                        .replace("-----END " + PRIVATE + "-----", "");
        try {
            return KeyFactory.getInstance(ALGORITHM)
                    .generatePrivate(new PKCS8EncodedKeySpec(Base64.getMimeDecoder().decode(bare)));
        } catch (GeneralSecurityException | IllegalArgumentException e) {
            throw new Problem("the private key is no " + ALGORITHM + " key in PKCS #8", e);
        }
    }

    /**
     * Reads a public key.
     *
     * @param text base64 of its X.509 form
     * @return the key
     * @throws Problem when it is none
     */
    public static PublicKey publicKey(String text) throws Problem {
        try {
            return KeyFactory.getInstance(ALGORITHM)
                    .generatePublic(
                            new X509EncodedKeySpec(Base64.getDecoder().decode(text.strip())));
        } catch (GeneralSecurityException | IllegalArgumentException e) {
            throw new Problem("\"" + text.strip() + "\" is no " + ALGORITHM + " public key", e);
        }
    }

    /**
     * Signs bytes.
     *
     * @param key the signer's private key
     * @param bytes what is signed
     * @return the signature in base64
     * @throws Problem when the key does not sign
     */
    public static String sign(PrivateKey key, byte[] bytes) throws Problem {
        try {
            Signature signature = Signature.getInstance(ALGORITHM);
            signature.initSign(key);
            signature.update(bytes);
            return Base64.getEncoder().encodeToString(signature.sign());
        } catch (GeneralSecurityException e) {
            throw new Problem("the key does not sign: " + e.getMessage(), e);
        }
    }

    /**
     * Tells whether a signature holds.
     *
     * @param key the signer's public key, as text
     * @param bytes what was signed
     * @param signed the signature in base64
     * @return whether it is one of this key over these bytes
     */
    public static boolean holds(String key, byte[] bytes, String signed) {
        try {
            Signature signature = Signature.getInstance(ALGORITHM);
            signature.initVerify(publicKey(key));
            signature.update(bytes);
            return signature.verify(Base64.getDecoder().decode(signed.strip()));
        } catch (GeneralSecurityException | IllegalArgumentException | Problem e) {
            return false;
        }
    }

    /**
     * Gives a short name of a key, to be read out over a telephone.
     *
     * @param key the public key, as text
     * @return the first digits of its SHA-256
     */
    public static String fingerprint(String key) {
        try {
            byte[] digest =
                    MessageDigest.getInstance("SHA-256")
                            .digest(key.strip().getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest).substring(0, SHOWN);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
