/** The shape of a part: which elements it is built of. Ads of one list look alike; what else stands in the list does not. */
import type { Part } from './parts.ts';

const DEEPEST = 5;
const MOST = 60;

/** Paths of tags inside a part, down to some depth. Names of classes are left out: they change with every state of a card. */
export function shapeOf(part: Part): ReadonlySet<string> {
  const paths = new Set<string>();
  const pending: { part: Part; path: string; depth: number }[] = [{ part, path: part.tag, depth: 0 }];
  for (const { part: at, path, depth } of pending) {
    paths.add(path);
    if (depth >= DEEPEST || paths.size >= MOST) continue;
    for (const child of at.children)
      if (child.characters > 0 || child.pictures > 0 || child.links > 0)
        pending.push({ part: child, path: `${path} ${child.tag}`, depth: depth + 1 });
  }
  return paths;
}

/** What at least half of the shapes have. */
export function typicalShape(shapes: readonly ReadonlySet<string>[]): ReadonlySet<string> {
  const counts = new Map<string, number>();
  for (const shape of shapes) for (const path of shape) counts.set(path, (counts.get(path) ?? 0) + 1);
  return new Set([...counts].filter(([, count]) => count * 2 >= shapes.length).map(([path]) => path));
}

/** Which part of the typical shape this one has, 0 to 1. */
export function likeness(shape: ReadonlySet<string>, typical: ReadonlySet<string>): number {
  if (typical.size === 0) return 0;
  let shared = 0;
  for (const path of typical) if (shape.has(path)) shared += 1;
  return shared / typical.size;
}
