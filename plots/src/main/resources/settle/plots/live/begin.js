byId("large").addEventListener("click", () => {
  const large = document.documentElement.classList.toggle("large");
  byId("large").setAttribute("aria-pressed", String(large));
});
show();
prepareEngine().then(() => setText(state.text)).catch((trouble) => {
  state.trouble = "The engine cannot start in this browser (" + trouble.message + "). A newer one runs it; or have the page written again with --javascript, for older browsers.";
  show();
});
// What checks of this page ask, as its own hands do.
globalThis.settle = { state, ask: (what, given) => quick.ask(what, given), run: (what, given) => slow.ask(what, given), stop: () => quick.stop(new Error("stopped")) };
