import { X509Certificate } from "node:crypto";

/**
 * The names and IPv4 addresses that a certificate is made for (RFC 5280, subject alternative names), in small letters, as its owner wrote them down. One with a star, which could be
 * any name, is left out: the names of the network stand for it.
 */
export function certNames(certificate: Buffer): string[] {
  const { subjectAltName = "" } = new X509Certificate(certificate);
  return subjectAltName.split(", ").flatMap((said) => {
    const [, name] = /^(?:DNS|IP Address):([a-z0-9.-]+)$/i.exec(said) ?? [];
    return name === undefined ? [] : [name.toLowerCase()];
  });
}
