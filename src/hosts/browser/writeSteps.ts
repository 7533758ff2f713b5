/** Runs single writes as one: each is undone when a later one fails, and all of them are one undo step. */
import { ICommandService, type IMutationInfo } from '@univerjs/core';
import { HostError, type Progress } from '../../workbook/port';
import type { Consequence } from './joiningUndoService';
import type { Engine } from './engine';

export interface WriteStep {
  /** Told to whoever watches the writes. */
  readonly name: string;
  /** Asked for just before it is executed, so that it can hold what the steps before it made. */
  mutations(): { readonly redo: IMutationInfo; readonly undo: IMutationInfo };
}

/** @throws HostError; then nothing was written */
export function writeAsOne(
  engine: Engine,
  title: string,
  plan: () => readonly WriteStep[],
  onWrite: (step: string) => void,
  progress: Progress = () => undefined,
): void {
  try {
    progress(0);
    const { redos, undos } = runSteps(engine, plan(), (step, done) => {
      onWrite(step);
      progress(done);
    });
    if (redos.length > 0) {
      engine.undo.pushAlone({
        title,
        unitID: engine.unitId,
        redoMutations: [...redos],
        undoMutations: [...undos],
      });
    }
    progress(1);
  } catch (cause) {
    if (cause instanceof HostError) throw cause;
    throw new HostError({ code: 'failed', action: title }, { cause });
  }
}

/** @throws what the failing step threw, after it and everything before it was undone */
export function runSteps(
  engine: Engine,
  steps: readonly WriteStep[],
  onStep: (step: string, done: number) => void,
): Consequence {
  const redos: IMutationInfo[] = [];
  const undos: IMutationInfo[] = [];
  let halfDone: IMutationInfo | null = null;
  try {
    steps.forEach((step, i) => {
      onStep(step.name, i / steps.length);
      const { redo, undo } = step.mutations();
      halfDone = undo;
      execute(engine, redo);
      halfDone = null;
      redos.push(redo);
      undos.unshift(undo);
    });
  } catch (error) {
    const failures = [...(halfDone === null ? [] : [halfDone]), ...undos].flatMap((undo) => {
      try {
        execute(engine, undo);
        return [];
      } catch (failure) {
        // What the failing step did not begin cannot be undone; that is no failure.
        return undo === halfDone ? [] : [failure];
      }
    });
    if (failures.length > 0) throw new AggregateError([error, ...failures], 'could not be undone');
    throw error;
  }
  return { redos, undos };
}

function execute(engine: Engine, { id, params }: IMutationInfo): void {
  if (!engine.accessor.get(ICommandService).syncExecuteCommand(id, params)) throw new Error(`${id} refused`);
}
