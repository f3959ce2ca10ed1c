/** Whose grid figures these are and under which licence, short enough for one line; the whole notice stands behind it. */
export function shortNotice(notice: string): string {
  const [first = notice] = notice.split(/(?<=\.)\s+(?=\p{Lu})/u);
  const licence = /Licence: [^(]+/u.exec(notice)?.[0].trim();
  return licence === undefined ? notice : `${first.replace(/^Average: /u, 'Grid: ')} ${licence}.`;
}
