// Levers: each a slider with its number. What differs from the file is marked and can be put back.
const shown = new Map();
let shape0 = "";
function labelOf(lever) { return (lever.room ? lever.room + ", " : "") + lever.label; }
function decimalsOf(lever) { return lever.step < 0.1 ? (lever.step < 0.1 && lever.step !== 0.05 ? 3 : 2) : lever.step < 1 ? (lever.step === 0.125 ? 3 : 1) : 0; }
function worded(lever, value) {
  if (lever.kind === "LOCKSHIELD_TURNS" && value === 0) return "shut";
  const text = minus(String(Number(value.toFixed(3))));
  return text + (lever.unit ? " " + (lever.unit === "turns" && value <= 1 ? "turn" : lever.unit) : "");
}
function madeLever(lever) {
  const name = "lever-" + shown.size;
  const range = element("input", { type: "range", id: name, min: String(lever.least), max: String(lever.most), step: String(lever.step) });
  const number = element("input", { type: "number", step: "any", min: String(lever.least), max: String(lever.most), "aria-label": labelOf(lever) + ", " + (lever.unit || "number") });
  const now = element("span", { class: "now" });
  const was = element("div", { class: "was" });
  const back = element("button", { type: "button" }, "put back");
  const box = element("div", { class: "lever", "data-lever": lever.id }, element("label", { for: name }, lever.label), now, range, number, was);
  const view = { box, range, number, now, was, back, lever };
  range.addEventListener("input", () => {
    const value = Number(range.value);
    if (!view.holding) remember();
    view.holding = true;
    now.textContent = worded(lever, value);
    range.setAttribute("aria-valuetext", worded(lever, value));
    followLever(lever.id, value);
  });
  range.addEventListener("change", () => { view.holding = false; moveLever(lever.id, Number(range.value)); });
  number.addEventListener("change", () => {
    const value = Math.min(Math.max(Number(number.value), lever.least), lever.most);
    if (!Number.isFinite(value)) return;
    remember();
    moveLever(lever.id, value);
  });
  back.addEventListener("click", () => { remember(); const first = firstOf(lever.id); if (first) moveLever(lever.id, first.value); range.focus(); });
  shown.set(lever.id, view);
  return box;
}
const firstOf = (id) => state.first && state.first.levers.find((one) => one.id === id);
function drawLevers() {
  const levers = state.opened && state.opened.levers;
  if (!levers) return;
  const form = JSON.stringify(levers.map((l) => [l.id, l.label, l.least, l.most]));
  if (form !== shape0) {
    const active = document.activeElement && document.activeElement.closest ? document.activeElement.closest("[data-lever]") : null;
    const keep = active ? [active.dataset.lever, document.activeElement.type] : null;
    const openBefore = new Set([...document.querySelectorAll("#levers details[open]")].map((d) => d.dataset.group));
    shape0 = form;
    shown.clear();
    const house = levers.filter((l) => !l.room).map(madeLever);
    const rooms = state.opened.rooms.map((room) => {
      const own = levers.filter((l) => l.room === room);
      if (!own.length) return null;
      const parts = own.filter((l) => !l.arrangement).map(madeLever);
      for (const arrangement of state.opened.arrangements) {
        const there = own.filter((l) => l.arrangement === arrangement);
        if (there.length) parts.push(element("h3", {}, arrangement), ...there.map(madeLever));
      }
      const details = element("details", { "data-group": room }, element("summary", {}, room), ...parts);
      if (openBefore.has(room)) details.open = true;
      return details;
    });
    byId("levers").replaceChildren(...house, ...rooms.filter((one) => one));
    if (keep && shown.has(keep[0])) shown.get(keep[0])[keep[1] === "number" ? "number" : "range"].focus();
  }
  for (const lever of levers) {
    const view = shown.get(lever.id);
    view.lever = lever;
    if (view.holding) continue;
    view.range.value = String(lever.value);
    if (document.activeElement !== view.number) view.number.value = String(Number(lever.value.toFixed(3)));
    view.now.textContent = worded(lever, lever.value);
    view.range.setAttribute("aria-valuetext", worded(lever, lever.value));
    const first = firstOf(lever.id);
    const moved = Boolean(first) && Math.abs(first.value - lever.value) > 1e-9;
    view.box.classList.toggle("moved", moved);
    if (moved) view.was.replaceChildren("in the file " + worded(lever, first.value), view.back);
    else view.was.replaceChildren();
  }
  for (const details of document.querySelectorAll("#levers details")) {
    const moved = details.querySelectorAll(".moved").length;
    details.firstChild.textContent = details.dataset.group + (moved ? " (" + moved + " moved)" : "");
  }
}
watchers.push(drawLevers);
