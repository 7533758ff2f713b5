/**
 * To be called before parts of the pane are drawn anew; what it gives, after that. Where what had the focus is gone by
 * then, the heading of its section has it, else the pane's: never nothing.
 */
export function holdFocus(root: HTMLElement): () => void {
  const held = document.activeElement;
  if (held === null || !root.contains(held)) return () => undefined;
  const heading = held.closest('section')?.querySelector('h2') ?? root.querySelector('h2');
  return () => {
    if (!held.isConnected || held.closest('[hidden]') !== null) heading?.focus();
  };
}
