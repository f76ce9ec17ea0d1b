// The short way to a first house: rooms, their sizes, walls, what heats it. It writes an ordinary scenario to go on with.
const WALLS = ["solid brick wall", "cavity wall unfilled", "cavity wall filled"];
const SOURCES = [["a boiler, water at 65 °C", 65], ["a boiler, water at 55 °C", 55], ["a heat pump, water at 45 °C", 45], ["a heat pump, water at 35 °C", 35]];
const USUAL = [["living room", 5, 4, 21], ["kitchen", 4, 3, 19], ["bedroom", 4, 3.5, 18], ["bathroom", 2.5, 2, 22], ["hall", 4, 2, 18], ["study", 3, 2.5, 20], ["second bedroom", 3.5, 3, 18], ["third bedroom", 3, 2.5, 18]];
function choice(label, options) {
  return element("label", {}, label + " ", element("select", {}, ...options.map((one, i) => element("option", { value: String(i) }, one))));
}
function measure(label, value, least, most, step) {
  return element("label", {}, label + " ", element("input", { type: "number", value: String(value), min: String(least), max: String(most), step: String(step), required: "" }));
}
const answerOf = (label) => label.lastChild;
function roomFields([name, length, width, want], at) {
  return element("fieldset", {}, element("legend", {}, "Room " + (at + 1)),
    element("label", {}, "name ", element("input", { type: "text", value: name, maxlength: "40", required: "" })),
    measure("length, m", length, 1, 20, 0.1), measure("width, m", width, 1, 20, 0.1),
    measure("outside walls", 2, 0, 4, 1), measure("warm, °C", want, 10, 26, 0.5));
}
function shortForm() {
  const cold = measure("coldest day, °C outdoors", -3, -25, 10, 1);
  const walls = choice("outside walls", WALLS);
  const source = choice("what heats it", SOURCES.map((one) => one[0]));
  const count = measure("rooms", 3, 1, USUAL.length, 1);
  const rooms = element("div", {});
  const fill = () => {
    const wanted = Math.min(Math.max(Math.round(Number(answerOf(count).value)) || 1, 1), USUAL.length);
    while (rooms.children.length > wanted) rooms.lastChild.remove();
    while (rooms.children.length < wanted) rooms.append(roomFields(USUAL[rooms.children.length], rooms.children.length));
  };
  answerOf(count).addEventListener("change", fill);
  fill();
  const form = element("form", {}, cold, walls, source, count, rooms, element("button", { type: "submit" }, "Ask about this house"));
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    const read = [...rooms.children].map((field) => {
      const [name, length, width, outside, want] = [...field.querySelectorAll("input")].map((one) => one.value);
      return { name: name.trim() || "room", length: Number(length), width: Number(width), outside: Number(outside), want: Number(want) };
    });
    const names = new Set();
    for (const room of read) { let name = room.name; for (let n = 2; names.has(name); n++) name = room.name + " " + n; names.add(room.name = name); }
    openText("house.yaml", written(read, Number(answerOf(cold).value), WALLS[Number(answerOf(walls).value)], SOURCES[Number(answerOf(source).value)][1]));
    byId("short").open = false;
  });
  return form;
}
const metres = (value) => String(Number(value.toFixed(1)));
function written(rooms, cold, wall, flow) {
  const lines = ["# Written from a few answers: what was not asked is as usual. Windows are 15 % of the floor, ceilings 2.4 m high under a loft,",
    "# and the source gives whatever heat the water takes at its temperature.", "title: My house", "site:", "  design outdoor: " + cold + " °C", "rooms:"];
  for (const room of rooms) {
    lines.push("  " + JSON.stringify(room.name) + ":", "    size: " + metres(room.length) + " x " + metres(room.width) + " x 2.4 m", "    want: " + room.want + " °C", "    air change: 0.7 /h", "    surfaces:");
    for (let i = 0; i < room.outside; i++) {
      const side = i % 2 ? room.width : room.length;
      const glass = Math.min(0.15 * room.length * room.width, 0.6 * side * 2.4);
      lines.push("      - {name: outside wall " + (i + 1) + ", wall: outdoors, area: " + metres(side) + " x 2.4 m, construction: " + wall
        + (i ? "}" : ", openings: {type: double glazing, area: " + glass.toFixed(2) + " m²}}"));
    }
    lines.push("      - {floor: ground, construction: suspended timber floor}", "      - {ceiling: outdoors, construction: loft ceiling 100 mm}");
  }
  lines.push("arrangements:", "  heated skirting:", "    balanced: yes", "    rooms:");
  for (const room of rooms) lines.push("      " + JSON.stringify(room.name) + ": {emitter: skirting 170, length: " + metres(Math.max(1.5 * (room.length + room.width) - 1, 1)) + " m, pipe length: 12 m}");
  lines.push("  radiators:", "    balanced: yes", "    rooms:");
  for (const room of rooms) lines.push("      " + JSON.stringify(room.name) + ": {emitter: type 22 600 mm, length: " + metres(Math.max(0.07 * room.length * room.width, 0.4)) + " m, pipe length: 12 m}");
  lines.push("source:", "  fixed flow: " + flow + " °C", "");
  return lines.join("\n");
}
byId("short").append(shortForm());
byId("short").open = given.file === "";
