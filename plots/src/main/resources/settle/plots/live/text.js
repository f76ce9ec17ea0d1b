// The text itself, with its lines numbered.
const area = byId("text");
let typing = 0;
function numberLines() {
  const lines = area.value.split("\n").length;
  const wrong = new Set((state.opened ? state.opened.problems : []).map((one) => one.line));
  byId("numbers").textContent = Array.from({ length: lines }, (_, i) => (wrong.has(i + 1) ? "\u25b6 " : "") + (i + 1)).join("\n");
  byId("numbers").scrollTop = area.scrollTop;
}
function goToLine(line, column) {
  const lines = area.value.split("\n");
  const at = lines.slice(0, line - 1).reduce((sum, one) => sum + one.length + 1, 0);
  area.focus();
  area.setSelectionRange(at + column - 1, at + (lines[line - 1] || "").length);
  area.scrollTop = Math.max(0, (line - 4) * parseFloat(getComputedStyle(area).lineHeight));
}
area.addEventListener("scroll", () => { byId("numbers").scrollTop = area.scrollTop; });
area.addEventListener("input", () => {
  clearTimeout(typing);
  numberLines();
  typing = setTimeout(() => { typing = 0; if (area.value !== state.text) { remember(); setText(area.value); } }, 350);
});
watchers.push(() => {
  // What was typed and not taken yet must not be lost to an answer that arrives in between.
  if (!typing && document.activeElement !== area && area.value !== state.text) area.value = state.text;
  numberLines();
  byId("undo").disabled = !state.earlier.length;
  byId("reset").disabled = state.text === state.original;
});
byId("undo").addEventListener("click", undo);
byId("reset").addEventListener("click", () => { remember(); setText(state.original); });
byId("save").addEventListener("click", () => save(plainName(state.file.replace(/^.*[\\/]/, "").replace(/\.ya?ml$/i, "")) + ".yaml", state.text, "text/yaml"));
byId("open").addEventListener("click", () => byId("file").click());
async function read(file) { if (file) openText(file.name, await file.text()); }
byId("file").addEventListener("change", () => { read(byId("file").files[0]); byId("file").value = ""; });
addEventListener("dragover", (event) => event.preventDefault());
addEventListener("drop", (event) => { event.preventDefault(); read(event.dataTransfer.files[0]); });
