import { EditorBridgeService } from '@univerjs/sheets-ui';

/**
 * What joins a cell and its editor, where typing goes before a cell. The grid takes every cell written in the place of
 * the one that is typed into, on whatever sheet, for news of that one, and puts what stands in it over what was typed:
 * a calculation that ended at the wrong moment took half a word away. What is being typed stays.
 */
export class TypingBridge extends EditorBridgeService {
  override refreshEditCellState(): void {
    if (!this.isVisible().visible) super.refreshEditCellState();
  }
}
