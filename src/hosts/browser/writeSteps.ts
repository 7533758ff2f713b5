/** Runs single writes as one: each is undone when a later one fails, and all of them are one undo step. */
import { ICommandService, type IMutationInfo } from '@univerjs/core';
import type { Consequence } from './joiningUndoService';
import type { Engine } from './engine';

export interface WriteStep {
  /** Told to whoever watches the writes. */
  readonly name: string;
  /** Asked for just before it is executed, so that it can hold what the steps before it made. */
  mutations(): { readonly redo: IMutationInfo; readonly undo: IMutationInfo };
}

/** @throws what the failing step threw, after everything before it was undone */
export function runSteps(
  engine: Engine,
  steps: readonly WriteStep[],
  onStep: (step: string, done: number) => void,
): Consequence {
  const redos: IMutationInfo[] = [];
  const undos: IMutationInfo[] = [];
  try {
    steps.forEach((step, i) => {
      onStep(step.name, i / steps.length);
      const { redo, undo } = step.mutations();
      // Kept before it is executed: a write that fails half-way is undone as well.
      undos.unshift(undo);
      execute(engine, redo);
      redos.push(redo);
    });
  } catch (error) {
    for (const undo of undos) execute(engine, undo);
    throw error;
  }
  return { redos, undos };
}

function execute(engine: Engine, { id, params }: IMutationInfo): void {
  if (!engine.accessor.get(ICommandService).syncExecuteCommand(id, params)) throw new Error(`${id} refused`);
}
