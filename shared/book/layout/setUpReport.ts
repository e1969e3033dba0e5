/** One thing that setting up did, or found and left alone. */
export type SetUpChange =
  | { readonly kind: 'created'; readonly sheet: string }
  | { readonly kind: 'renamed'; readonly from: string; readonly sheet: string }
  | { readonly kind: 'column'; readonly sheet: string; readonly heading: string }
  | { readonly kind: 'setting'; readonly label: string }
  | { readonly kind: 'formula'; readonly sheet: string; readonly heading: string }
  | { readonly kind: 'units'; readonly sheet: string; readonly system: string }
  | { readonly kind: 'layout'; readonly sheet: string }
  | { readonly kind: 'left'; readonly because: string };

/** What setting up did, in sentences. */
export function setUpReport(changes: readonly SetUpChange[]): string {
  const done = changes.filter(({ kind }) => kind !== 'left');
  const left = changes.flatMap((change) => (change.kind === 'left' ? [change.because] : []));
  if (done.length === 0)
    return ['Everything was in place already. Nothing was changed.', ...left].join(' ');
  return [...sentences(done), 'Nothing else changed.', ...left].join(' ');
}

function sentences(changes: readonly SetUpChange[]): readonly string[] {
  const created = changes.flatMap((change) => (change.kind === 'created' ? [change.sheet] : []));
  const updated = changes.flatMap((change) => (change.kind === 'layout' ? [change.sheet] : []));
  const settings = changes.flatMap((change) => (change.kind === 'setting' ? [change.label] : []));
  const filling = changes.flatMap((change) => (change.kind === 'formula' ? [change.heading] : []));
  return [
    ...changes.flatMap((change) =>
      change.kind === 'renamed'
        ? [`Gave the sheet ${change.from} its name ${change.sheet} back.`]
        : [],
    ),
    ...(created.length > 0 ? [`Created ${list(created)}.`] : []),
    ...columnSentences(changes),
    ...unitSentences(changes),
    ...(settings.length > 0 ? [`Added to Shop: ${list(settings)}.`] : []),
    ...(filling.length > 0 ? [`Wrote the formulas of ${list(filling)} in Orders.`] : []),
    ...(updated.length > 0
      ? [`Brought formats, notes, drop-downs and protection up to date in ${list(updated)}.`]
      : []),
  ];
}

function columnSentences(changes: readonly SetUpChange[]): readonly string[] {
  const bySheet = new Map<string, string[]>();
  for (const change of changes) {
    if (change.kind !== 'column') continue;
    bySheet.set(change.sheet, [...(bySheet.get(change.sheet) ?? []), change.heading]);
  }
  return [...bySheet].map(
    ([sheet, headings]) =>
      `Added ${headings.length === 1 ? 'column' : 'columns'} ${list(headings)} to ${sheet}.`,
  );
}

function unitSentences(changes: readonly SetUpChange[]): readonly string[] {
  const turned = changes.flatMap((change) => (change.kind === 'units' ? [change] : []));
  const [first] = turned;
  if (first === undefined) return [];
  const sheets = list(turned.map(({ sheet }) => sheet));
  return [`Wrote ${first.system} units into the headings of ${sheets}, which had no rows yet.`];
}

function list(words: readonly string[]): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} and ${words[words.length - 1] ?? ''}`;
}
