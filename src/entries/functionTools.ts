/** The worksheet functions, for whoever shows their working. */
import { functions } from '../functions';
import { explainCall, sayInputs } from '../functions/explain';
import type { FunctionTools } from '../taskpane/readWorking';

export const functionTools: FunctionTools = {
  run: (id, args) => functions.get(id)?.run(args) ?? null,
  explain: (id, args) => {
    const definition = functions.get(id);
    return definition === undefined ? null : explainCall(definition, args);
  },
  sayInputs: (id, args) => {
    const definition = functions.get(id);
    return definition === undefined ? [] : sayInputs(definition, args);
  },
};
