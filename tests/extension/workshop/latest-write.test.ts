import { expect, it } from 'vitest';
import { latestWrite } from '../../../extension/workshop/latest-write.ts';

it('of what is typed while a write is under way the latest alone is written, and nothing last is lost', async () => {
  const written: string[] = [];
  const ends: (() => void)[] = [];
  const write = latestWrite((value: string) => {
    written.push(value);
    return new Promise<void>((resolve) => ends.push(resolve));
  });
  for (const value of ['1', '12', '123', '1234']) write(value);
  expect(written).toEqual(['1']);
  ends[0]?.();
  await Promise.resolve();
  await Promise.resolve();
  await Promise.resolve();
  expect(written).toEqual(['1', '1234']);
});

it('goes on after a write that failed', async () => {
  const written: number[] = [];
  const write = latestWrite(async (value: number) => {
    written.push(value);
    if (value === 1) throw new Error('full');
  });
  write(1);
  await new Promise((resolve) => setTimeout(resolve));
  write(2);
  await new Promise((resolve) => setTimeout(resolve));
  expect(written).toEqual([1, 2]);
});
