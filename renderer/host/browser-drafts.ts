import type { KeepOutcome, LeftDraft } from '../../electron/host.ts';

interface KeptDraft {
  readonly title: string;
  readonly at: number;
  readonly text: string;
}

const prefix = 'tonne.draft.';

function draftOf(kept: string | null): KeptDraft | null {
  try {
    const value: unknown = JSON.parse(kept ?? '');
    if (typeof value !== 'object' || value === null) return null;
    const { title, at, text } = value as Partial<Record<keyof KeptDraft, unknown>>;
    return typeof title === 'string' && typeof at === 'number' && typeof text === 'string' ? { title, at, text } : null;
  } catch {
    return null;
  }
}

/**
 * Unsaved work in the browser's own store, one entry a tab. It outlives a tab that crashed or was closed, as long as the page keeps
 * its address; the store belongs to that address, port included. A lock that ends with its tab tells which entries are still in
 * use (Web Locks, W3C).
 */
export class BrowserDrafts {
  #id: string = crypto.randomUUID();

  constructor() {
    this.#hold(this.#id);
  }

  keep(text: string | null, title: string): KeepOutcome {
    try {
      const kept: KeptDraft = { title, at: Date.now(), text: text ?? '' };
      if (text === null) localStorage.removeItem(prefix + this.#id);
      else localStorage.setItem(prefix + this.#id, JSON.stringify(kept));
      return { kind: 'kept' };
    } catch {
      const what = 'Unsaved edits cannot be kept for the case of a crash: the browser gives no more room for them';
      return { kind: 'failed', sentence: `${what}. They are still open here. Save them to be safe.` };
    }
  }

  /** Newest first. The browser does not say where a file lies, so that no draft can be set beside its file. */
  async left(): Promise<readonly LeftDraft[]> {
    const { held = [] } = await navigator.locks.query();
    const inUse = new Set(held.map((lock) => lock.name));
    const names = Object.keys(localStorage).filter((name) => name.startsWith(prefix) && !inUse.has(name));
    return names
      .flatMap((name) => {
        const draft = draftOf(localStorage.getItem(name));
        if (draft === null) return [];
        return { id: name.slice(prefix.length), ...draft, name: null, file: 'none' as const, fileText: null };
      })
      .sort((one, other) => other.at - one.at);
  }

  /** Goes on under the name of a draft that was left; false when it is not there any more. */
  take(id: string): boolean {
    if (localStorage.getItem(prefix + id) === null) return false;
    this.keep(null, '');
    this.#id = id;
    this.#hold(id);
    return true;
  }

  forget(id: string): void {
    localStorage.removeItem(prefix + id);
  }

  /** Held until the tab is gone. */
  #hold(id: string): void {
    void navigator.locks.request(prefix + id, () => new Promise<never>(() => undefined));
  }
}
