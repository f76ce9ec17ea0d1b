// The answer, always in sight: at rest as soon as a lever moves, by runs once they are done.
const WORDS = { yes: "Yes", only_just: "Only just", no: "No" };
let said = "";
function atRest(arrangement) {
  const cold = arrangement.rooms.filter((room) => room.heated && !room.held);
  if (!cold.length) return { word: "At rest: every room held", why: "In design weather, " + digits(state.rest.outdoor, 1) + " °C outdoors." };
  const worst = cold.reduce((a, b) => (b.want - b.operative > a.want - a.operative ? b : a));
  return {
    word: "At rest: " + (cold.length === 1 ? "1 room" : cold.length + " rooms") + " too cold",
    why: worst.name + " settles at " + digits(worst.operative, 1) + " °C where " + digits(worst.want, 1) + " °C is wanted.",
  };
}
watchers.push(() => {
  document.title = (state.opened && state.opened.title ? state.opened.title + " \u2013 " : "") + "settle";
  if (state.opened && state.opened.title) byId("title").textContent = state.opened.title;
  if (state.rest) byId("question").textContent = "Is it warm enough at " + digits(state.rest.outdoor, 1) + " °C outdoors and in milder weather?";
  const confirmed = state.answer && state.answeredFor === state.text && !state.following;
  const replies = !state.rest ? [] : state.rest.arrangements.map((arrangement, i) => {
    const found = confirmed && state.answer.answers[i];
    const rest = atRest(arrangement);
    const word = found ? WORDS[found.outcome] : rest.word;
    const why = found ? found.plain.replace(/^(Yes|No|Only just)\. /, "") : rest.why;
    const steps = found && found.outcome !== "yes" && found.steps.length ? "What would help: " + found.steps.join(" ") : "";
    const reply = element("div", { class: "reply" + (found ? "" : " stale") },
      element("div", { class: "who" }, arrangement.name), element("div", { class: "word" }, word),
      element("p", { class: "why" }, why), steps ? element("p", { class: "why" }, steps) : null);
    reply.style.borderLeftColor = "var(--a" + (i % 4) + ")";
    return { reply, words: arrangement.name + ": " + word + ". " + why };
  });
  const now = replies.map((one) => one.words).join(" ");
  if (now !== said) {
    byId("whys").replaceChildren(...replies.map((one) => element("p", {}, one.words)));
    byId("answers").replaceChildren(...replies.map((one) => one.reply));
    if (said) replies.forEach((one) => one.reply.classList.add("changed"));
    said = now;
    if (confirmed) byId("heard").textContent = now;
  }
  byId("done").hidden = !state.working;
  byId("cancel").hidden = !state.working;
  byId("doing").textContent = state.working ? state.working + "\u2026" : confirmed
    ? "Confirmed by runs" + (state.answer.answers.every((a) => a.tried) ? ", and tried on houses like it." : "; houses like it not tried.")
    : state.rest ? "At rest, not run." : "Getting ready\u2026";
});
byId("cancel").addEventListener("click", () => slow.stop());
watchers.push(() => {
  const box = byId("trouble");
  const problems = state.opened ? state.opened.problems : [];
  const warnings = state.opened && state.opened.warnings ? state.opened.warnings : [];
  box.hidden = !problems.length && !state.trouble && !warnings.length;
  const lines = (list) => element("ul", {}, ...list.map((one) => element("li", {},
    element("button", { type: "button", on: { click: () => goToLine(one.line, one.column) } }, "Line " + one.line + ": " + one.message))));
  box.replaceChildren(
    ...(state.trouble ? [element("p", {}, element("strong", {}, "It could not be worked out: "), state.trouble),
      element("p", {}, element("button", { type: "button", on: { click: () => { state.trouble = ""; setText(state.text); } } }, "Try again"))] : []),
    ...(problems.length ? [element("p", {}, element("strong", {}, "The scenario cannot be read. What is shown is of the last text that could be.")), lines(problems)] : []),
    ...(warnings.length && !problems.length ? [element("p", {}, element("strong", {}, "Doubtful in the scenario")), lines(warnings)] : []));
});
watchers.push(() => {
  const confirmed = state.answer && state.answeredFor === state.text && !state.following;
  byId("more").hidden = !confirmed;
  if (!confirmed) return;
  byId("found").replaceChildren(...state.answer.answers.map((answer) => element("details", {},
    element("summary", {}, answer.name + ": " + answer.sentence),
    element("table", {}, element("tbody", {}, ...answer.lines.map((line) => element("tr", {}, element("th", { scope: "row" }, line.name), element("td", {}, line.words))))),
    ...answer.points.flatMap((points) => [element("h3", {}, points.name), element("ul", {}, ...points.words.map((word) => element("li", {}, word)))]))));
});
