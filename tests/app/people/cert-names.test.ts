import { expect, test } from "vitest";
import { certNames } from "../../../app/people/cert-names";
import { siteOf } from "../../../app/people/open-to-people";

/** Made for these tests by openssl, for Farm.example, *.farm.example and 192.0.2.7, an address kept for examples (RFC 5737). Its key is nowhere. */
const CERTIFICATE = Buffer.from(`-----BEGIN CERTIFICATE-----
MIIBpDCCAUqgAwIBAgIUVsxPNeB01tlIdXiiYNrTByqgsNwwCgYIKoZIzj0EAwIw
DzENMAsGA1UEAwwEZmFybTAeFw0yNjExMjYwNDQ0MzBaFw00NjExMjEwNDQ0MzBa
MA8xDTALBgNVBAMMBGZhcm0wWTATBgcqhkjOPQIBBggqhkjOPQMBBwNCAARnRdT3
ie7GkMkYm7zah8M9NaXNROVm4hrSiIJTraA+ZKdZsONcc42feKFDXk6T7wGMH0of
m6VKxnEDsvsKQzoGo4GDMIGAMB0GA1UdDgQWBBRcWYWnLWHZ+30uYVSUsVo5KQeh
RTAfBgNVHSMEGDAWgBRcWYWnLWHZ+30uYVSUsVo5KQehRTAPBgNVHRMBAf8EBTAD
AQH/MC0GA1UdEQQmMCSCDEZhcm0uZXhhbXBsZYIOKi5mYXJtLmV4YW1wbGWHBMAA
AgcwCgYIKoZIzj0EAwIDSAAwRQIga1FsIek4PJY0KbtEPTm2xlkvXvXSLqqs7b7j
nHflwQACIQCvBx4oItBmX1c3I5f+BhYm+2eNsswl5avYd/fd6sjDCA==
-----END CERTIFICATE-----
`);

test("the farm is served by the names of its certificate, in small letters; a name with a star is none", () => {
  expect(certNames(CERTIFICATE)).toEqual(["farm.example", "192.0.2.7"]);
});

test("a certified name is told first, and the network's own stay", () => {
  const { names, scheme } = siteOf("0.0.0.0", "https", ["farm.example"]);
  expect([names[0], scheme, names.includes("127.0.0.1")]).toEqual(["farm.example", "https", true]);
  expect(siteOf("192.0.2.7", "https", certNames(CERTIFICATE)).names).toEqual(["farm.example", "192.0.2.7"]);
  expect(siteOf("127.0.0.2", "http").names).toEqual(["127.0.0.2"]);
});
