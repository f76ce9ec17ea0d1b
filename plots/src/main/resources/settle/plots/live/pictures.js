// Pictures come from the engine as SVG; names in them are escaped there, and nothing in them runs.
function drawnPicture(picture) {
  const svg = new DOMParser().parseFromString(picture.svg, "image/svg+xml").documentElement;
  const figure = element("figure", {}, element("figcaption", {}, element("h3", {}, picture.title), element("p", {}, picture.meaning)));
  if (svg.nodeName === "svg") {
    svg.setAttribute("role", "img");
    svg.setAttribute("aria-label", picture.title + ". " + picture.meaning);
    figure.append(element("div", { class: "paper", tabindex: "0", role: "group", "aria-label": "Picture: " + picture.title }, document.importNode(svg, true)));
  }
  figure.append(element("p", {}, element("button", { type: "button", on: { click: () => save(plainName(picture.name) + ".svg", picture.svg, "image/svg+xml") } }, "Save as SVG")));
  return figure;
}
let drawnFrom = [];
watchers.push(() => {
  byId("draw").disabled = !state.rest || state.opened.problems.length > 0;
  const day = state.day && state.day.text === state.text ? state.day.pictures : [];
  const answer = state.answeredFor === state.text ? state.pictures : [];
  const all = [...answer, ...day];
  if (all.length === drawnFrom.length && all.every((one, i) => one === drawnFrom[i])) return;
  drawnFrom = all;
  byId("drawn").replaceChildren(...all.map(drawnPicture));
});
byId("draw").addEventListener("click", drawDay);
