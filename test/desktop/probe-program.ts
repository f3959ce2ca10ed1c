import { cp, mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { bundles } from '../../build/bundles.mjs';
import { refreshBundle, resultOf } from '../../build/make-bundle.mjs';

const page = `<!doctype html>
<title>Probe</title>
<script type="module" src="probe.js"></script>
<script>window.inlineRan = true;</script>
<button id="eval">eval</button>
<button id="function">new Function</button>
<button id="element">inline script element</button>
<button id="fetch">fetch</button>
<button id="image">image</button>
<button id="frame">frame</button>
<button id="leave">leave</button>
<button id="open">open</button>
<button id="download">download</button>
<button id="worker">worker</button>
<a id="link" href="https://example.org/link">link</a>
<form action="https://example.org/form" method="post"><button id="form">send</button></form>
<output></output>
<ol></ol>`;

// Written without types, because the page runs it as it stands. Each attempt runs from a real click: what a driver evaluates in
// a page is exempt from the page's policy.
const script = `
const show = (result) => { document.querySelector('output').textContent = String(result); };
const attempt = (run) => { try { return run(); } catch (error) { return error.name; } };
const attempts = {
  eval: () => attempt(() => eval('1 + 1')),
  function: () => attempt(() => new Function('return 2')()),
  element: () => {
    const element = document.createElement('script');
    element.textContent = 'window.elementRan = true';
    document.body.append(element);
    return window.elementRan ?? 'blocked';
  },
  fetch: () => fetch('https://example.org/data').then(() => 'fetched', (error) => error.name),
  image: () => new Promise((resolve) => {
    const image = new Image();
    image.onload = () => resolve('loaded');
    image.onerror = () => resolve('blocked');
    image.src = 'https://example.org/picture.png';
  }),
  frame: () => {
    const frame = document.createElement('iframe');
    frame.src = '/index.html';
    document.body.append(frame);
    return 'appended';
  },
  leave: () => { location.href = 'https://example.org/leave'; return 'left'; },
  open: () => { window.open('https://example.org/open'); return 'opened'; },
  download: () => {
    const link = document.createElement('a');
    link.href = URL.createObjectURL(new Blob(['text']));
    link.download = 'text.txt';
    link.click();
    return 'clicked';
  },
  worker: () => new Promise((resolve) => {
    const worker = new Worker('/worker.js', { type: 'module' });
    worker.onmessage = (event) => resolve(event.data);
    worker.onerror = () => resolve('failed');
  }),
};
for (const [id, run] of Object.entries(attempts)) {
  document.getElementById(id).addEventListener('click', async () => {
    show('');
    show(await run());
  });
}
tonneHost.onCommand((command) => {
  const item = document.createElement('li');
  item.textContent = command;
  document.querySelector('ol').append(item);
});
document.documentElement.dataset.ready = 'yes';
`;

const worker = `import { sum } from './sum.js'; postMessage('sum ' + sum(1, 2));`;
const sum = 'export const sum = (a, b) => a + b;';

export interface ProbeProgram {
  readonly distFolder: string;
  remove(): Promise<void>;
}

/** The built main process and preload, around a page that tries what no page should be able to do. */
export async function buildProbeProgram(): Promise<ProbeProgram> {
  await refreshBundle(bundles.electron);
  const distFolder = await mkdtemp(join(tmpdir(), 'probe-'));
  const renderer = join(distFolder, 'renderer');
  await mkdir(renderer);
  await cp(dirname(resultOf(bundles.electron)), join(distFolder, 'electron'), { recursive: true });
  const files = { 'index.html': page, 'probe.js': script, 'worker.js': worker, 'sum.js': sum };
  for (const [name, text] of Object.entries(files)) await writeFile(join(renderer, name), text);
  return { distFolder, remove: () => rm(distFolder, { recursive: true }) };
}
