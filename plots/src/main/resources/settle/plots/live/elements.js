// Elements by their names. Words go in as text, never as markup.
const byId = (id) => document.getElementById(id);
function element(name, has = {}, ...inside) {
  const made = document.createElement(name);
  for (const [key, value] of Object.entries(has)) {
    if (key === "on") for (const [event, act] of Object.entries(value)) made.addEventListener(event, act);
    else if (key in made && typeof value !== "string") made[key] = value;
    else made.setAttribute(key, value);
  }
  made.append(...inside.filter((one) => one !== null && one !== undefined));
  return made;
}
const SVG = "http://www.w3.org/2000/svg";
function shape(name, has = {}, words = "") {
  const made = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(has)) made.setAttribute(key, String(value));
  if (words) made.textContent = words;
  return made;
}
const minus = (text) => text.replace("-", "\u2212");
const digits = (value, decimals) => minus(value.toFixed(decimals));
function save(name, text, type) {
  const link = element("a", { href: URL.createObjectURL(new Blob([text], { type })), download: name });
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 1000);
}
const plainName = (words) => words.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, "-").replace(/^-|-$/g, "") || "house";
function unpacked(letters) {
  const packed = Uint8Array.from(atob(letters), (c) => c.charCodeAt(0));
  return new Response(new Blob([packed]).stream().pipeThrough(new DecompressionStream("gzip")));
}
const utf8 = (letters) => new TextDecoder().decode(Uint8Array.from(atob(letters), (c) => c.charCodeAt(0)));
