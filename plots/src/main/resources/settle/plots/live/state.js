// What is known: one text, and what was found of it. Everything shown follows from here.
const HOUSES = 256;
const PAUSE = 500;
const state = {
  file: given.file || "house.yaml", original: given.text, text: given.text, earlier: [],
  opened: null, first: null, rest: null, restBefore: null, answer: null, answeredFor: "", pictures: [],
  working: "", trouble: "", timer: 0, looking: false, wanted: null, following: false,
};
const watchers = [];
const show = () => watchers.forEach((watch) => watch());
async function look(text) {
  const opened = JSON.parse(await quick.ask("open", [text, state.file]));
  const rest = opened.problems.length ? null : JSON.parse(await quick.ask("rest", [text, state.file]));
  return { opened, rest };
}
function take(text, { opened, rest }) {
  state.text = text;
  state.opened = opened;
  state.trouble = "";
  if (rest) { state.rest = rest; if (!state.first) state.first = opened; }
  show();
  confirmSoon();
}
// Only the latest of what was asked for is looked at: a lever moves faster than it can be followed.
async function want(make) {
  state.wanted = make;
  if (state.looking) return;
  state.looking = true;
  try {
    while (state.wanted) {
      const next = state.wanted;
      state.wanted = null;
      const text = await next();
      if (text !== null) take(text, await look(text));
    }
  } catch (trouble) {
    state.trouble = trouble.message;
    show();
  } finally {
    state.looking = false;
  }
}
function remember() {
  if (state.earlier[state.earlier.length - 1] !== state.text) state.earlier.push(state.text);
  state.restBefore = state.rest;
}
const setText = (text) => want(async () => text);
// While a lever is held only the rest follows; the text is written once it is let go.
const followLever = (id, value) => want(async () => {
  state.rest = JSON.parse(await quick.ask("restWith", [state.text, state.file, id, value]));
  state.following = true;
  slow.stop();
  show();
  return null;
});
const moveLever = (id, value) => want(async () => {
  const text = await quick.ask("moved", [state.text, state.file, id, value]);
  state.following = false;
  return text;
});
function undo() {
  const text = state.earlier.pop();
  if (text !== undefined) { state.restBefore = state.rest; setText(text); }
}
function openText(file, text) {
  slow.stop();
  Object.assign(state, { file, original: text, first: null, answer: null, answeredFor: "", pictures: [], earlier: [], rest: null, restBefore: null });
  setText(text);
}
function confirmSoon() {
  clearTimeout(state.timer);
  if (state.opened.problems.length || state.answeredFor === state.text) return;
  if (state.working) slow.stop();
  state.timer = setTimeout(confirm, PAUSE);
}
async function confirm() {
  const text = state.text;
  const told = (done) => { byId("done").value = done; };
  const step = async (words, what, args) => {
    state.working = words;
    told(0);
    show();
    state.answer = JSON.parse(await slow.ask(what, args, told));
    state.answeredFor = text;
    state.working = "";
    show();
  };
  try {
    await step("Confirming by runs", "confirm", [text, state.file]);
    const drawn = JSON.parse(await slow.ask("answerPictures", []));
    state.pictures = drawn.pictures;
    if (state.text !== text) return;
    await step("Trying " + HOUSES + " houses like it", "odds", [text, HOUSES]);
  } catch (trouble) {
    state.working = "";
    if (!(trouble instanceof Stopped)) state.trouble = trouble.message;
    show();
  }
}
async function drawDay() {
  const text = state.text;
  if (state.working) slow.stop();
  await new Promise((go) => setTimeout(go, 0));
  state.working = "Running a day";
  byId("done").value = 0;
  show();
  try {
    const day = JSON.parse(await slow.ask("dayPictures", [text, state.file], (done) => { byId("done").value = done; }));
    state.day = { text, pictures: day.pictures };
    state.working = "";
    show();
    if (state.answeredFor !== text) confirmSoon();
  } catch (trouble) {
    state.working = "";
    if (!(trouble instanceof Stopped)) state.trouble = trouble.message;
    show();
  }
}
