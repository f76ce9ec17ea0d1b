// Runs cases for a process that asks: a line "prepare NAME FILE", then lines "repeat TIMES". Answers each with one line, a
// repetition with the microseconds of processor time that it took and the figure that came of it.
const fs = require('fs');
const readline = require('readline');

const [script, runtime] = process.argv.slice(2);

const load = async () => {
  if (!script.endsWith('.wasm')) return require(script);
  require(runtime);
  return (await TeaVM.wasmGC.load(fs.readFileSync(script))).exports;
};

const used = () => {
  // Of this thread alone where node knows it: others compile and collect.
  const { user, system } = (process.threadCpuUsage ?? process.cpuUsage).call(process);
  return user + system;
};

load().then((cases) => {
  readline.createInterface({ input: process.stdin }).on('line', (line) => {
    const [what, argument, file] = line.split('\t');
    if (what === 'prepare') {
      cases.prepare(argument, file ? fs.readFileSync(file, 'utf8') : '');
      console.log('ready');
    } else {
      const from = used();
      const figure = cases.repeat(Number(argument));
      console.log(`${used() - from}\t${figure}`);
    }
  });
});
