package org.skewback.desk.checking;

import java.time.LocalDate;

/**
 * A signature over a manifest.
 *
 * @param role what the signer did: prepared, checked or approved
 * @param name who signed
 * @param date when, as the signer says
 * @param key the signer's public key: X.509, in base64
 * @param signature Ed25519 signature of the manifest's bytes (RFC 8032), in base64
 */
public record Signature(String role, String name, LocalDate date, String key, String signature) {}
