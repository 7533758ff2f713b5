/**
 * `npm run bench`: ratios of one run, side by side. The times are information about the machine it ran on: the
 * processor's for this program alone, on the mean of the runs, so that other programs lengthen none.
 */
import { Bench } from 'tinybench';
import { comparisons, type Comparison } from './comparisons';

const processorTime = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};

/** Milliseconds for each case, or two runs where those take longer, after one that does not count. */
const enough = {
  time: 400,
  iterations: 2,
  warmupTime: 100,
  warmupIterations: 1,
  now: processorTime,
  throws: true,
};

/** In milliseconds. */
async function timesOf({ cases }: Comparison): Promise<number[]> {
  const bench = new Bench(enough);
  for (const { name, run } of cases) bench.add(name, () => run() as Promise<void>);
  return (await bench.run()).map(({ name, result }) => {
    if (result.state !== 'completed') throw new Error(`${name}: ${result.state}`);
    return result.latency.mean;
  });
}

const say = (name: string, ratio: string, time: string): void =>
  console.log(`${name.padEnd(54)}${ratio.padStart(9)}${time.padStart(13)}`);

async function measure(): Promise<void> {
  say('', 'ratio', 'here, in ms');
  for (const comparison of comparisons) {
    const times = await timesOf(comparison);
    const each = comparison.cases.map(({ size }, i) => (times[i] ?? NaN) / size);
    console.log(`${comparison.title}: time for a ${comparison.per}`);
    comparison.cases.forEach(({ name }, i) =>
      say(`  ${name}`, ((each[i] ?? NaN) / (each[0] ?? NaN)).toFixed(2), (times[i] ?? NaN).toPrecision(3)),
    );
  }
}

// The grid's workbooks would keep the program waiting.
void measure().then(() => process.exit());
