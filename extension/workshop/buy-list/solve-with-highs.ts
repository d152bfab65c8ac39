/** Solves a program with HiGHS, a solver of linear and integer programs (MIT), compiled to WebAssembly. Runs wherever it is loaded: worker or test. */
import type { Highs } from 'highs';
import type { Program, Solution } from '../../../src/kit/buy-list/index.ts';
import { lpText } from '../../../src/kit/buy-list/lp-text.ts';

/** Objectives are whole minor units: a gap under one proves the best. HiGHS would else stop at one part in ten thousand. */
const OPTIONS = { output_flag: false, mip_abs_gap: 0.9, mip_rel_gap: 0 };

/** Throws when HiGHS neither solves the program nor proves that it has no solution. */
export function solveWithHighs(highs: Highs, program: Program): Solution {
  return highs.withModel({ format: 'lp', data: lpText(program) }, (model): Solution => {
    model.options.set(OPTIONS);
    model.run();
    const status = model.getModelStatus();
    if (status === highs.constants.modelStatus.infeasible) return { status: 'infeasible' };
    if (status !== highs.constants.modelStatus.optimal) throw new Error(`HiGHS ended with status ${status}`);
    const { colValue } = model.getSolution();
    // HiGHS numbers its columns in the order in which the text names them first.
    const values = program.variables.map(({ name }) => colValue[model.getColByName(name)] ?? 0);
    const whole = program.variables.some((variable) => variable.whole);
    const objective = model.getObjectiveValue();
    return { status: 'optimal', values, objective, bound: whole ? Number(model.info.get('mip_dual_bound')) : objective };
  });
}
