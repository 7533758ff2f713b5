import { LocalUndoRedoService, type IMutationInfo, type IUndoRedoItem, type Nullable } from '@univerjs/core';

/** What follows from an action and is undone with it. */
export interface Consequence {
  readonly redos: readonly IMutationInfo[];
  readonly undos: readonly IMutationInfo[];
}

export interface TitledStep extends IUndoRedoItem {
  readonly title: string;
}

/**
 * The engine's undo stack, where a listener may join further writes to an action before it becomes an undo step.
 * Every way of editing (typing, pasting, filling, choosing from a list) ends here, with what it wrote.
 */
export class JoiningUndoService extends LocalUndoRedoService {
  private follow: ((item: IUndoRedoItem) => Consequence | null) | null = null;
  private readonly listeners = new Set<(unitId: string) => void>();

  /** `follow` has executed what it gives back. */
  joinWith(follow: (item: IUndoRedoItem) => Consequence | null): void {
    this.follow = follow;
  }

  override pushUndoRedo(item: IUndoRedoItem): void {
    let joined = item;
    try {
      const consequence = this.follow?.(item) ?? null;
      if (consequence !== null) {
        joined = {
          ...item,
          redoMutations: [...item.redoMutations, ...consequence.redos],
          undoMutations: [...consequence.undos, ...item.undoMutations],
        };
      }
    } finally {
      // Whatever became of the consequence, the action itself can be undone.
      this.push(joined);
    }
  }

  /** A step that is complete in itself. */
  pushAlone(step: TitledStep): void {
    this.push(step);
  }

  /** Told of each new step by its unit: a cell's editor is one of its own. Gives back what ends the listening. */
  onStep(listener: (unitId: string) => void): () => void {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }

  /** What the next undo takes back; "" for what people did in the grid, null when there is nothing. */
  titleOfUndo(): string | null {
    return titleOf(this.pitchTopUndoElement());
  }

  titleOfRedo(): string | null {
    return titleOf(this.pitchTopRedoElement());
  }

  private push(step: IUndoRedoItem): void {
    super.pushUndoRedo(step);
    for (const listener of this.listeners) listener(step.unitID);
  }
}

function titleOf(step: Nullable<IUndoRedoItem | TitledStep>): string | null {
  if (step == null) return null;
  return 'title' in step ? step.title : '';
}
