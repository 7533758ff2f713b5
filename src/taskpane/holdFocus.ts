/** After a wait: who has gone on to the grid, or to another section, keeps the focus there. */
export function focusUnlessElsewhere(target: HTMLElement): void {
  const { activeElement, body } = document;
  if (activeElement === body || target.closest('section')?.contains(activeElement) === true) target.focus();
}

/**
 * What disappears while the pane is shown anew must not take the focus with it.
 *
 * @returns to be called once it is shown: the heading of the section takes the focus when what had it is gone, unless
 * the section has given it to something else
 */
export function holdFocus(root: HTMLElement): () => void {
  const held = document.activeElement;
  const heading = held?.closest('section')?.querySelector('h2') ?? root.querySelector('h2');
  const isHeld = root.contains(held);
  return () => {
    const isGone = held?.isConnected !== true || held.closest('[hidden]') !== null;
    const isElsewhere = ![held, document.body].includes(document.activeElement);
    if (isHeld && isGone && !isElsewhere) heading?.focus();
  };
}
