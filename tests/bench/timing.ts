/** Median of the times of one call, in milliseconds, after the compiler has warmed up. */
export function medianTime(run: () => unknown, rounds: number): number {
  for (let round = 0; round < Math.min(rounds, 50); round++) run();
  const times = Array.from({ length: rounds }, () => {
    const start = performance.now();
    run();
    return performance.now() - start;
  });
  times.sort((a, b) => a - b);
  return times[Math.floor(rounds / 2)] ?? Number.NaN;
}

/** Mean processor time of one call, in milliseconds, after one call to warm up: for calls too long to escape a busy machine's other work. */
export function processorTime(run: () => unknown, rounds: number): number {
  run();
  const start = process.cpuUsage();
  for (let round = 0; round < rounds; round++) run();
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1000 / rounds;
}

/** What any reader of the same bytes must at least do: parse them once as JSON and scan them once with a plain pattern. */
export function reference(text: string): () => number {
  const json = JSON.stringify({ text });
  return () => {
    const parsed: { text: string } = JSON.parse(json);
    let found = 0;
    for (const _ of parsed.text.matchAll(/\d+(?:\.\d+)?|[a-z]+|[^\s\w]/gi)) found += 1;
    return found;
  };
}
