/**
 * `npm run bench [-- WORD …] [-- --json]`: times every case of the `*.bench.ts` files beside it whose name holds one of
 * the words; `page` also looks at the page in a browser. Measured, never asserted; a claim of speed is a ratio within
 * one run.
 */

import { readdirSync } from 'node:fs';
import { measure } from './harness.ts';
import type { BenchCase } from './harness.ts';
import { pageFigures } from './page.ts';

const words = process.argv.slice(2).filter((word) => !word.startsWith('--'));
const files = readdirSync(new URL('.', import.meta.url))
  .filter((file) => file.endsWith('.bench.ts'))
  .sort();
const cases: BenchCase[] = [];
for (const file of files) {
  const { casesOf } = (await import(new URL(file, import.meta.url).href)) as { casesOf: () => readonly BenchCase[] };
  cases.push(...casesOf());
}
const chosen = cases.filter(({ name }) => words.length === 0 || words.some((word) => name.includes(word)));
const result = measure(chosen, (name) => process.stderr.write(`${name} …\n`));
const page = words.length === 0 || words.includes('page') ? await pageFigures() : [];

if (process.argv.includes('--json')) {
  console.log(JSON.stringify({ ...result, page }, null, 2));
} else {
  console.log(`${result.machine}, Node ${result.node}; medians of five (sink ${result.sink.toPrecision(3)})`);
  for (const { name, note, variants } of chosen) {
    console.log(`\n${name}${note === undefined ? '' : `: ${note}`}`);
    for (const { name: variant } of variants) {
      const { medianMs, leastMs } = result.timings.find(
        (timing) => timing.case === name && timing.variant === variant,
      )!;
      console.log(`  ${variant.padEnd(34)} ${milliseconds(medianMs)}   least ${milliseconds(leastMs)}`);
    }
    for (const { of, to, value, target } of result.ratios.filter((ratio) => ratio.case === name)) {
      console.log(
        `  ${of} : ${to} = ${value < 0.1 ? `1/${(1 / value).toFixed(0)}` : value.toFixed(2)}` +
          `${target === undefined ? '' : ` (wanted: ${target})`}`,
      );
    }
  }
  for (const { name, medianMs, mostMs, wanted } of page)
    console.log(`\npage: ${name}\n  ${milliseconds(medianMs)}   most ${milliseconds(mostMs)} (wanted: ${wanted})`);
}

function milliseconds(value: number): string {
  return `${value < 10 ? value.toFixed(2) : value.toFixed(0)} ms`.padStart(12);
}
