/** Offers, before the pane opens, to take back a change that an earlier session left half done. */
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { createActions } from './actions';
import { element } from './elements';
import { createNotice } from './notice';
import { problemSentence } from './problemSentence';

const { cutOff, title } = catalogue.pane;

/** A workbook that keeps what stood there before a change. */
export interface Restorable {
  /** What the change is called; null when none was cut off. @throws HostError */
  findCutOff(): Promise<string | null>;
  /** @throws HostError */
  putBack(): Promise<void>;
}

/** Resolves when nothing is cut off, when it is put back, or when it is to be left for now. */
export async function offerPutBack(root: HTMLElement, workbook: Restorable): Promise<void> {
  // A workbook that cannot be read is a matter of the pane, which says so.
  const action = await workbook.findCutOff().catch(() => null);
  if (action === null) return;
  const actions = createActions(root);
  const notice = createNotice(actions);
  const put = element('button', { type: 'button' }, cutOff.put);
  const leave = element('button', { type: 'button' }, cutOff.leave);
  actions.add(put);
  actions.add(leave);
  root.replaceChildren(
    element('header', {}, element('h1', {}, title)),
    element('p', { role: 'alert' }, fill(cutOff.lead, { action })),
    element('div', {}, put, leave),
    notice.element,
  );
  await new Promise<void>((resolve) => {
    leave.addEventListener('click', () => void actions.run(async () => resolve()));
    put.addEventListener(
      'click',
      () =>
        void actions.run(async () => {
          notice.say(cutOff.working);
          try {
            await workbook.putBack();
            resolve();
          } catch (cause) {
            notice.warn(problemSentence(cause));
          }
        }),
    );
  });
}
