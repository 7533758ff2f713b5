import type { IAccessor, Nullable } from '@univerjs/core';
import { IEditorService, type Editor } from '@univerjs/docs-ui';
import { IShortcutService } from '@univerjs/ui';

/** The engine's own name for the keys of its list of functions, before the id of the editor. */
const listOfFunctions = 'sheet.formula-embedding-editor.search_function.';

/**
 * The list of functions follows the typing three tenths of a second behind, and for that while its keys put a name of
 * an older list in place of what stands there now. They take one only while the list on show is that of the name in
 * which the typing stands; otherwise a key does what it does without a list.
 */
export function takeFittingNames(accessor: IAccessor): void {
  const shortcuts = accessor.get(IShortcutService);
  const editors = accessor.get(IEditorService);
  const register = shortcuts.registerShortcut.bind(shortcuts);
  shortcuts.registerShortcut = (shortcut) => {
    if (!shortcut.id.startsWith(listOfFunctions)) return register(shortcut);
    const editorId = shortcut.id.slice(listOfFunctions.length);
    return register({
      ...shortcut,
      preconditions: () => namesSought() === nameAtHand(editors.getEditor(editorId)),
    });
  };
}

/** What the names on show begin with: the list sets it off. */
function namesSought(): string | undefined {
  return document
    .querySelector('[data-u-comp="sheets-formula-editor"] li > span > span')
    ?.textContent.toUpperCase();
}

/** The whole name in which the typing stands. */
function nameAtHand(editor: Nullable<Readonly<Editor>>): string | null {
  const [at, ...others] = editor?.getSelectionRanges() ?? [];
  if (at?.collapsed !== true || others.length > 0) return null;
  const text = editor?.getDocumentData().body?.dataStream ?? '';
  const before = /[\p{L}\p{N}_.]*$/u.exec(text.slice(0, at.startOffset))?.[0] ?? '';
  const after = /^[\p{L}\p{N}_.]*/u.exec(text.slice(at.startOffset))?.[0] ?? '';
  return (before + after).toUpperCase();
}
