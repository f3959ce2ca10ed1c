const fields: Readonly<Record<string, string>> = {
  label: 'Name',
  result: 'Result',
  route: 'Route',
  value: 'Value',
  unit: 'Unit',
  source: 'Source',
  from: 'First day',
  until: 'Last day',
};

/** A sentence about a place in the file, said of the field of the form: `"limits.3.unit": …` as "Unit: …". */
export function refusalWords(sentence: string): string {
  return sentence.replace(/^"limits\.\d+\.(\w+)"/u, (place, field: string) => fields[field] ?? place);
}
