/** What makes Excel refuse a manifest, or show nothing for it, without saying why. Reads XML as a browser does. */
import { childrenInOrder, iconSizes, listIcons, longest, requirementSets } from './manifestRules';

/** The bytes of a built file by its path under the address, null when there is none. */
export type ReadBuilt = (path: string) => Uint8Array | null;

/** One line for each fault, none when all is well. @param address where the build will stand, no slash at its end */
export function lintManifest(text: string, address: string, readBuilt: ReadBuilt): string[] {
  const manifest = new DOMParser().parseFromString(text, 'application/xml');
  const all = [...manifest.querySelectorAll('*')];
  const named = (name: string): Element[] => all.filter(({ localName }) => localName === name);
  const resources = all.filter((element) => element.parentElement?.parentElement?.localName === 'Resources');
  return [
    ...all.flatMap(orderFaults),
    ...identityFaults(named),
    ...resourceFaults(all, resources),
    ...requirementFaults(named('Set')),
    ...iconFaults(named, resources, address, readBuilt),
    ...runtimeFaults(named),
    ...addressFaults(all, address, readBuilt),
  ];
}

type Named = (name: string) => Element[];
const valueOf = (element: Element | undefined): string =>
  element?.getAttribute('DefaultValue') ?? element?.textContent ?? '';

function orderFaults(element: Element): string[] {
  const { localName, parentElement, children } = element;
  if (children.length === 0) return [];
  const type = element.getAttribute('xsi:type') ?? '';
  const order =
    childrenInOrder[`${localName} ${type}`] ??
    childrenInOrder[`${parentElement?.localName}/${localName}`] ??
    childrenInOrder[localName];
  if (order === undefined) return [`${localName} ${type}: may not stand here, or has no children`];
  const places = [...children].map((child) => order.indexOf(child.localName));
  const isSorted = places.every((place, i) => place >= 0 && place >= (places[i - 1] ?? 0));
  return isSorted ? [] : [`${localName}: its parts must be, in this order: ${order.join(', ')}`];
}

function identityFaults(named: Named): string[] {
  const faults: string[] = [];
  const [id] = named('Id');
  if (!/^[\da-f]{8}(-[\da-f]{4}){3}-[\da-f]{12}$/i.test(valueOf(id))) faults.push('Id: is no GUID');
  if (!/^\d{1,5}(\.\d{1,5}){0,3}$/.test(valueOf(named('Version')[0])))
    faults.push('Version: one to four numbers with dots between');
  for (const name of ['HighResolutionIconUrl', 'IconUrl', 'SupportUrl', 'Namespace'])
    if (named(name).length === 0) faults.push(`${name}: is missing`);
  if (valueOf(named('Permissions')[0]) !== 'ReadWriteDocument')
    faults.push('Permissions: ReadWriteDocument; with less, functions wait for ever on the web');
  for (const name of ['DisplayName', 'ProviderName'])
    if (valueOf(named(name)[0]).length > longest.name)
      faults.push(`${name}: over ${longest.name} characters`);
  if (valueOf(named('Description')[0]).length > longest.Description)
    faults.push(`Description: over ${longest.Description} characters`);
  for (const domain of named('AppDomain'))
    if (!valueOf(domain).startsWith('https://')) faults.push(`AppDomain ${valueOf(domain)}: needs https://`);
  return faults;
}

function resourceFaults(all: readonly Element[], resources: readonly Element[]): string[] {
  const faults: string[] = [];
  const ids = resources.map(({ id }) => id);
  const used = new Set(all.map((element) => element.getAttribute('resid')).filter((resid) => resid !== null));
  for (const resid of used) if (!ids.includes(resid)) faults.push(`${resid}: there is no such resource`);
  for (const [i, id] of ids.entries()) {
    if (ids.indexOf(id) < i) faults.push(`${id}: there are two resources of this name`);
    if (!used.has(id)) faults.push(`${id}: nothing uses this resource`);
    if (id.length > longest.id) faults.push(`${id}: a name has at most ${longest.id} characters`);
  }
  for (const resource of resources) {
    const kind = resource.parentElement?.localName ?? '';
    const most = kind === 'ShortStrings' || kind === 'LongStrings' ? longest[kind] : longest.Url;
    if (valueOf(resource).length > most) faults.push(`${resource.id}: over ${most} characters`);
  }
  return faults;
}

function requirementFaults(sets: readonly Element[]): string[] {
  return sets.flatMap((set) => {
    const name = set.getAttribute('Name') ?? '';
    const [major, minor] = (set.getAttribute('MinVersion') ?? '1.1').split('.').map(Number);
    const isKnown = major === 1 && (minor ?? 0) >= 1 && (minor ?? 0) <= (requirementSets[name] ?? 0);
    return isKnown ? [] : [`${name} ${set.getAttribute('MinVersion')}: no such requirement set`];
  });
}

function iconFaults(
  named: Named,
  resources: readonly Element[],
  address: string,
  readBuilt: ReadBuilt,
): string[] {
  const faults: string[] = [];
  const pixelFaults = (url: string, size: number): string[] => {
    const bytes = readBuilt(url.slice(address.length + 1));
    const pixels = bytes === null ? null : pngSize(bytes);
    return pixels === `${size}x${size}` ? [] : [`${url}: is ${pixels ?? 'no picture'}, not ${size}x${size}`];
  };
  for (const [name, size] of Object.entries(listIcons))
    for (const icon of named(name)) faults.push(...pixelFaults(valueOf(icon), size));
  for (const icon of named('Icon')) {
    const sizes = [...icon.children].map((image) => Number(image.getAttribute('size')));
    for (const size of iconSizes.wanted)
      if (!sizes.includes(size))
        faults.push(`${icon.parentElement?.localName}: an icon of ${size} is missing`);
    for (const image of icon.children) {
      const size = Number(image.getAttribute('size'));
      if (!(iconSizes.known as readonly number[]).includes(size))
        faults.push(`an icon of ${size} is never shown`);
      const resource = resources.find(({ id }) => id === image.getAttribute('resid'));
      if (resource !== undefined) faults.push(...pixelFaults(valueOf(resource), size));
    }
  }
  return faults;
}

/** Width and height as the header of a PNG says them; null when it is none. */
export function pngSize(bytes: Uint8Array): string | null {
  const signature = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];
  if (bytes.length < 24 || signature.some((byte, i) => bytes[i] !== byte)) return null;
  const view = new DataView(bytes.buffer, bytes.byteOffset);
  return `${view.getUint32(16)}x${view.getUint32(20)}`;
}

/** One runtime for pane and functions: all name the same page, and there is one pane. */
function runtimeFaults(named: Named): string[] {
  const faults: string[] = [];
  const [runtime] = named('Runtime');
  if (runtime === undefined) return ['Runtimes: is missing'];
  if (runtime.getAttribute('lifetime') !== 'long') faults.push('Runtime: its lifetime must be long');
  if (named('TaskpaneId').length > 0) faults.push('TaskpaneId: not in a shared runtime, which has one pane');
  if (!named('Set').some((set) => set.getAttribute('Name') === 'SharedRuntime'))
    faults.push('Requirements: SharedRuntime is missing');
  const page = runtime.getAttribute('resid');
  const places = [
    ...named('FunctionFile'),
    ...[...named('Page'), ...named('Action')].flatMap((place) => [...place.children]),
  ].filter((place) => place.hasAttribute('resid'));
  for (const place of places) {
    if (place.getAttribute('resid') !== page)
      faults.push(
        `${place.parentElement?.localName} ${place.localName}: must name the page of the Runtime, ${page}`,
      );
  }
  return faults;
}

function addressFaults(all: readonly Element[], address: string, readBuilt: ReadBuilt): string[] {
  const urls = all.map(valueOf).filter((value) => /^[a-z]+:\/\/\S+$/.test(value));
  return [...new Set(urls)].flatMap((url) => {
    if (!url.startsWith('https://')) return [`${url}: must begin with https://`];
    if (!url.startsWith(`${address}/`)) return [`${url}: stands elsewhere than ${address}`];
    return readBuilt(url.slice(address.length + 1)) === null ? [`${url}: the build makes no such file`] : [];
  });
}
