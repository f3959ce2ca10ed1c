/** Works something out once for each thing it is asked about, and gives the same again: every step is worked out at every keystroke. */
export function keptBy<Asked, Found>(work: (asked: Asked) => Found): (asked: Asked) => Found {
  const known = new Map<Asked, Found>();
  return (asked) => {
    if (known.has(asked)) return known.get(asked) as Found;
    const found = work(asked);
    known.set(asked, found);
    return found;
  };
}
