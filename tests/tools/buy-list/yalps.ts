/** A second solver for the same programs: YALPS (MIT), branch and cut in plain TypeScript. Fit for small ones. */
import { equalTo, greaterEq, lessEq, type Model, solve as solveModel } from 'yalps';
import type { Program, Solution } from '../../../src/kit/buy-list/index.ts';

/** Null when it runs out of time. */
export function solveWithYalps({ variables, objective, rows }: Program, timeout = 20_000): Solution | null {
  const coefficients = variables.map(() => new Map<string, number>());
  const add = (row: string, terms: Program['objective']): void => {
    for (const [at, factor] of terms) coefficients[at]?.set(row, (coefficients[at]?.get(row) ?? 0) + factor);
  };
  add('total', objective);
  for (const { name, terms } of rows) add(name, terms);
  const bounds = variables.flatMap(({ name, most }, at) => {
    if (most === null) return [];
    coefficients[at]?.set(`most-${name}`, 1);
    return [[`most-${name}`, lessEq(most)] as const];
  });
  const limit = { '<=': lessEq, '>=': greaterEq, '=': equalTo };
  const model: Model = {
    direction: 'minimize',
    objective: 'total',
    constraints: new Map([...bounds, ...rows.map(({ name, sense, right }) => [name, limit[sense](right)] as const)]),
    variables: new Map(variables.map(({ name }, at) => [name, coefficients[at] ?? new Map()])),
    integers: variables.filter(({ whole }) => whole).map(({ name }) => name),
  };
  const {
    status,
    result,
    variables: values,
  } = solveModel(model, { tolerance: 0, timeout, maxIterations: Number.POSITIVE_INFINITY });
  if (status === 'infeasible') return { status };
  if (status !== 'optimal') return null;
  const found = new Map(values);
  return { status, values: variables.map(({ name }) => found.get(name) ?? 0), objective: result, bound: result };
}
