import type { Stage } from '../../src/case/case.ts';
import type { OpenCase } from '../../src/index.ts';
import { components } from '../../src/paper/components.ts';
import { workOut } from '../../src/study/open-case.ts';
import { valueOf } from '../examples/demonstration.ts';
import { smallCase } from '../support/small-case.ts';

/** Five stages, three of them cascades, and twelve components: all but bale wire. */
const fiveStages: readonly Stage[] = [
  { id: 'pulp', like: 'vat' },
  { id: 'coarse', like: 'coarse', levels: 3 },
  { id: 'clean', like: 'fcln', levels: 5, forward: [3] },
  { id: 'fine', like: 'fine', levels: 4, law: 'plug flow' },
  { id: 'disperse', like: 'disperser', heat: 'computed', steam: 'direct' },
];
const twelve = components.filter((component) => component !== 'wire');
export const five: OpenCase = valueOf(
  workOut(
    smallCase({
      stages: fiveStages,
      route: { water: 'fresh water given' },
      figures: {
        'mill.machine.freshWater': '8 m3/t',
        ...Object.fromEntries(
          twelve
            .filter((each) => each !== 'fibre')
            .map((each, at) => [`material.paper.${each}`, `${String(1 + at / 4)} %`]),
        ),
      },
    }),
  ),
);
