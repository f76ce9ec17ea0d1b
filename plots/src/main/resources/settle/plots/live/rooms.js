// Rooms at rest: a number, and where it lies between cold and want. A thin mark stays where the last position had it.
const LOW = 10;
const HIGH = 26;
function roomScale(room, all, before) {
  const width = 300;
  const x = (t) => 6 + (Math.min(Math.max(t, LOW), HIGH) - LOW) / (HIGH - LOW) * (width - 12);
  const svg = shape("svg", { viewBox: "0 0 " + width + " 34", preserveAspectRatio: "none", "aria-hidden": "true" });
  svg.append(shape("line", { x1: 6, x2: width - 6, y1: 17, y2: 17, stroke: "var(--line)" }),
    shape("line", { x1: x(room.want), x2: x(room.want), y1: 3, y2: 31, stroke: "var(--ink)", "stroke-width": 2 }));
  all.forEach((one, i) => {
    const y = all.length === 1 ? 17 : 10 + i * 14 / Math.max(all.length - 1, 1);
    if (before[i]) svg.append(shape("line", { x1: x(before[i].operative), x2: x(one.operative), y1: y, y2: y, stroke: "var(--a" + (i % 4) + ")", "stroke-width": 1 }));
    svg.append(shape("rect", { x: x(one.operative) - 4, y: y - 4, width: 8, height: 8, fill: "var(--a" + (i % 4) + ")" }));
  });
  return svg;
}
watchers.push(() => {
  if (!state.rest) return;
  const { arrangements, outdoor } = state.rest;
  byId("roomsMean").textContent = "At rest at " + digits(outdoor, 1) + " °C outdoors, not run. Upright stroke: want. Squares: where a room settles, in the order of the columns, from " + LOW + " to " + HIGH + " °C; a thin line from where it was before.";
  const head = element("tr", {}, element("th", { scope: "col" }, "Room"), element("th", { scope: "col", class: "n" }, "Want"),
    ...arrangements.map((a, i) => { const th = element("th", { scope: "col", class: "n" }, a.name); th.style.color = "var(--a" + (i % 4) + ")"; return th; }),
    element("td", { class: "scale" }));
  const rows = arrangements[0].rooms.map((room, r) => {
    const all = arrangements.map((a) => a.rooms[r]);
    const before = state.restBefore ? state.restBefore.arrangements.map((a) => a.rooms.find((one) => one.name === room.name)) : [];
    return element("tr", {}, element("th", { scope: "row" }, room.name), element("td", { class: "n" }, digits(room.want, 1)),
      ...all.map((one) => element("td", { class: "n" + (one.heated && !one.held ? " short" : "") }, digits(one.operative, 1) + (one.heated && !one.held ? " cold" : ""))),
      element("td", { class: "scale" }, roomScale(room, all, before)));
  });
  const plant = [["Flow and return [°C]", (a) => digits(a.flowTemperature, 1) + " / " + digits(a.returnTemperature, 1)], ["Water [l/h]", (a) => digits(a.flow, 0)], ["Heat from the source [W]", (a) => digits(a.sourceHeat, 0)]];
  const rest = plant.map(([name, read]) => element("tr", {}, element("th", { scope: "row" }, name), element("td", {}), ...arrangements.map((a) => element("td", { class: "n" }, read(a))), element("td", { class: "scale" })));
  byId("roomsDrawn").replaceChildren(element("table", {}, element("thead", {}, head), element("tbody", {}, ...rows, ...rest)));
});
