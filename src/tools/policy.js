/**
 * The content security policy that a page states in its meta tag, for serving the same as a header.
 * @param {string} html
 * @returns {string}
 * @throws {Error} when the page states none
 */
export function pagePolicy(html) {
  const tag = html.match(/<meta\s[^>]*http-equiv="Content-Security-Policy"[^>]*>/i)?.[0];
  const policy = tag?.match(/\scontent="([^"]*)"/i)?.[1];
  if (policy === undefined) throw new Error("index.html states no Content-Security-Policy");
  return policy.replace(/\s+/g, " ").trim();
}
