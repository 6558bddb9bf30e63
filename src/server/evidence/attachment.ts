/**
 * A file name as the header Content-Disposition says it (RFC 6266): plain letters for old clients, and the whole name in
 * the coding of RFC 8187.
 * @example attachment('Boot kaputt 🚤.jpg').disposition
 * // 'attachment; filename="Boot kaputt _.jpg"; filename*=UTF-8\'\'Boot%20kaputt%20%F0%9F%9A%A4.jpg'
 */
export function attachment(name: string): { disposition: string } {
  const plain = name.replaceAll(/[^ -~]+|["\\/%]/g, '_');
  const coded = encodeURIComponent(name).replaceAll(
    /['()*]/g,
    (sign) => `%${sign.charCodeAt(0).toString(16).toUpperCase()}`,
  );
  return { disposition: `attachment; filename="${plain}"; filename*=UTF-8''${coded}` };
}
