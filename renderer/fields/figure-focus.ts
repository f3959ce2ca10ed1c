const figures = 'button[data-figure]';
// A figure counts as being in the same column when it is the nearest sideways, so that folded groups and empty cells are skipped.
const steps: Readonly<Record<string, (from: HTMLElement) => HTMLElement | undefined>> = {
  ArrowLeft: (from) => inRow(from, -1),
  ArrowRight: (from) => inRow(from, 1),
  ArrowUp: (from) => inColumn(from, -1),
  ArrowDown: (from) => inColumn(from, 1),
};

/**
 * Arrow keys lead from figure to figure of a table. A ledger holds some hundred figures: as stops of the Tab key they would stand
 * between one slot and the next.
 */
export function figureFocus(figure: HTMLElement): () => void {
  const onKeyDown = (event: KeyboardEvent): void => {
    const next = steps[event.key]?.(figure);
    if (next === undefined) return;
    event.preventDefault();
    next.focus();
  };
  figure.addEventListener('keydown', onKeyDown);
  return () => figure.removeEventListener('keydown', onKeyDown);
}

function inRow(from: HTMLElement, direction: 1 | -1): HTMLElement | undefined {
  const row = figuresOf(from.closest('tr'));
  return row[row.indexOf(from) + direction];
}

function inColumn(from: HTMLElement, direction: 1 | -1): HTMLElement | undefined {
  const rows = [...(from.closest('table')?.rows ?? [])].filter((row) => row.querySelector(figures) !== null);
  const own = rows.findIndex((row) => row.contains(from));
  const row = rows[own + direction];
  const middle = centre(from);
  return figuresOf(row).sort((left, right) => Math.abs(centre(left) - middle) - Math.abs(centre(right) - middle))[0];
}

function figuresOf(row: Element | null | undefined): HTMLElement[] {
  return [...(row?.querySelectorAll<HTMLElement>(figures) ?? [])];
}

function centre(element: HTMLElement): number {
  const { left, right } = element.getBoundingClientRect();
  return (left + right) / 2;
}
