import { describe, expect, it } from 'vitest';
import { keptFromLines, keptFromRoutes } from '../../src/case/kept-names.ts';
import { openCase } from '../../src/study/open-case.ts';
import { type Loose, at, problemsAfter, sample, sampleText, textOfFile } from './sample-case.ts';

const nameRoute = (content: Loose, name: string): void => {
  at(content, 'routes.1')['id'] = name;
  at(content, 'compare')['with'] = name;
  at(content, 'investment')['to'] = name;
  at(content, 'sameProduct.0')['with'] = name;
  at(content, 'actuals.0')['result'] = `${name}.electricity.total`;
};
const nameLine = (content: Loose, name: string): void => {
  at(content, 'routes.1.lines.0')['id'] = name;
  at(content, 'routes.1')['balance'] = name;
};

/** Words that could be a name and stand at a place of an id where a name of the case may stand. */
function wordsOfProgram(text: string): { first: Set<string>; second: Set<string> } {
  const outcome = openCase(text);
  if (!outcome.ok) throw new Error(`The case has problems: ${JSON.stringify(outcome.problems)}`);
  const { content, model } = outcome.value;
  const [first, second] = [new Set<string>(), new Set<string>()];
  for (const id of model.graph.positions.keys()) {
    const [begin = '', next = ''] = id.split('.');
    const route = content.routes.find((each) => each.id === begin);
    if (route === undefined) first.add(begin);
    else if (route.lines.every((line) => line.id !== next)) second.add(next);
  }
  const couldBeName = (word: string) => /^[a-z0-9-]+$/.test(word);
  return { first: new Set([...first].filter(couldBeName)), second: new Set([...second].filter(couldBeName)) };
}

describe('names that the program keeps for itself', () => {
  it.each(['test/old-cases/version-1.tonne', 'examples/demonstration.tonne'])(
    'are all that its ids use in %s',
    (path) => {
      const { first, second } = wordsOfProgram(textOfFile(path));

      expect(first.size).toBeGreaterThan(8);
      expect([...first].filter((word) => !keptFromRoutes.has(word))).toEqual([]);
      expect(second.size).toBeGreaterThan(8);
      expect([...second].filter((word) => !keptFromLines.has(word))).toEqual([]);
    },
  );

  it.each([...keptFromRoutes])('cannot name a route: %s', (name) => {
    expect(problemsAfter((content) => nameRoute(content, name))).toEqual([
      {
        kind: 'wrong form',
        path: 'routes.1.id',
        given: `"${name}"`,
        allowed: 'a name that the program does not use itself',
      },
    ]);
  });

  it.each([...keptFromLines])('cannot name a line: %s', (name) => {
    expect(problemsAfter((content) => nameLine(content, name))).toEqual([
      {
        kind: 'wrong form',
        path: 'routes.1.lines.0.id',
        given: `"${name}"`,
        allowed: 'a name that the program does not use itself',
      },
    ]);
  });

  it('cannot be what every object of JavaScript has', () => {
    expect(problemsAfter((content) => (at(content, 'destinations.0')['id'] = 'constructor'))).toMatchObject([
      { kind: 'wrong form', path: 'destinations.0.id', given: '"constructor"' },
    ]);
  });
});

describe('names of the user', () => {
  // Words that stand further back in ids, or nowhere: whichever of them a person chooses, the model can still be written down.
  const words = ['fibre', 'feed', 'stock', 'share', 'yield', 'grade', 'dose', 'removal', 'total', 'tip', 'a', 'x-1'];

  it.each(words)(
    'may be %s for a route, a line, a stage, a material, a destination, a chemical and a charge',
    (word) => {
      const content = sample();
      nameRoute(content, word);
      nameLine(content, word);
      at(content, 'routes.1.lines.0.stages.0')['id'] = word;
      at(content, 'materials.2')['id'] = word;
      at(content, 'routes.1.lines.0.recipe.1')['material'] = word;
      at(content, 'destinations.5')['id'] = word;
      at(content, 'chemicals.0')['id'] = word;
      (at(content, 'routes.1.machineChemicals') as unknown as string[])[1] = word;
      at(content, 'routes.1.additives.0')['id'] = word;
      at(content, 'routes.1.charges.0')['id'] = word;
      content['inputs'] = {};

      const outcome = openCase(JSON.stringify(content));
      expect(outcome).toMatchObject({ ok: true });
      expect(outcome.ok && outcome.value.model.graph.positions.size).toBe(sizeOfSample());
    },
  );
});

function sizeOfSample(): number {
  const content = { ...(JSON.parse(sampleText) as Loose), inputs: {} };
  const outcome = openCase(JSON.stringify(content));
  return outcome.ok ? outcome.value.model.graph.positions.size : -1;
}
