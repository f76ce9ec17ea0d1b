// What runs in the worker: it loads the engine, then answers one question after the other.
let page = null;
self.onmessage = async (event) => {
  const { id, what, given } = event.data;
  try {
    if (what === "load") {
      page = given.module
        ? (await TeaVM.wasmGC.load(given.module)).exports
        : self;
      for (const name of Object.keys(given.beside)) page.beside(name, given.beside[name]);
      self.postMessage({ id, answer: "" });
      return;
    }
    const told = (done) => self.postMessage({ id, done });
    const answer = page[what](...given, told);
    self.postMessage(answer[0] === "!" ? { id, trouble: answer.slice(1) } : { id, answer });
  } catch (trouble) {
    self.postMessage({ id, trouble: String((trouble && trouble.message) || trouble) });
  }
};
