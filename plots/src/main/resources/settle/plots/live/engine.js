// The engine, in workers made of text that is in this file: one that follows the levers, one that runs.
const given = JSON.parse(utf8(byId("data").textContent));
const engine = { module: null, url: "" };
async function prepareEngine() {
  const kind = byId("module").dataset.kind;
  const letters = byId("module").textContent;
  const glue = utf8(byId("worker").textContent);
  if (kind === "wasm") {
    if (typeof DecompressionStream === "undefined") throw new Error("this browser is too old for it");
    const bytes = await unpacked(letters).arrayBuffer();
    engine.module = await WebAssembly.compile(bytes, { builtins: ["js-string"] });
    engine.url = URL.createObjectURL(new Blob([glue], { type: "text/javascript" }));
  } else {
    const script = await unpacked(letters).text();
    engine.url = URL.createObjectURL(new Blob([script, "\n", glue], { type: "text/javascript" }));
  }
  byId("module").textContent = "";
}
class Hand {
  constructor() { this.worker = null; this.waiting = new Map(); this.next = 1; }
  start() {
    this.worker = new Worker(engine.url);
    this.worker.onmessage = ({ data }) => {
      const asked = this.waiting.get(data.id);
      if (!asked) return;
      if ("done" in data) { asked.told(data.done); return; }
      this.waiting.delete(data.id);
      if ("trouble" in data) asked.fail(new Error(data.trouble)); else asked.answer(data.answer);
    };
    this.worker.onerror = (event) => { event.preventDefault(); this.stop(new Error(event.message || "the engine stopped")); };
    return this.send("load", { module: engine.module, beside: given.beside }, () => {});
  }
  send(what, args, told) {
    const id = this.next++;
    return new Promise((answer, fail) => {
      this.waiting.set(id, { answer, fail, told });
      this.worker.postMessage({ id, what, given: args });
    });
  }
  async ask(what, args, told = () => {}) {
    if (!this.worker) await this.start();
    return this.send(what, args, told);
  }
  stop(why = new Stopped()) {
    if (this.worker) this.worker.terminate();
    this.worker = null;
    const waiting = [...this.waiting.values()];
    this.waiting.clear();
    waiting.forEach((asked) => asked.fail(why));
  }
}
class Stopped extends Error {}
const quick = new Hand();
const slow = new Hand();
