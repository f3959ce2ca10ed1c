import { describe, expect, it } from 'vitest';
import { type Quantity, constant, total } from '../../../src/kernel/expression/quantity.ts';
import { nodeNamed } from '../../../src/kernel/graph/graph.ts';
import { formulaOf } from '../../../src/workbook/formulas/formula-of.ts';
import { ownCells } from '../../../src/workbook/formulas/own-cells.ts';
import { SmallGraph } from '../../kernel/small-graph.ts';

/** The formula of a result over inputs whose cells are named as they are. */
function formula(make: (of: Record<'a' | 'b' | 'c', Quantity>) => Quantity): string {
  const small = new SmallGraph();
  const [a, b, c] = [small.input('a', '2'), small.input('b', '3'), small.input('c', '4')];
  small.define('result', make({ a, b, c }));
  const graph = small.build();
  const own = ownCells(graph);
  return formulaOf(graph, nodeNamed(graph, 'result').index, (index) => {
    const node = graph.nodes[index];
    if (node?.operation.op === 'input') return node.operation.key;
    if (node?.operation.op === 'constant' && own.has(index)) return `fixed_${node.operation.digits}`;
    return own.has(index) ? `step_${String(index)}` : null;
  });
}

describe('the formula of', () => {
  it.each<[string, (of: Record<'a' | 'b' | 'c', Quantity>) => Quantity, string]>([
    ['a sum', ({ a, b, c }) => total([a, b, c], '1'), 'a+b+c'],
    ['a difference of a difference', ({ a, b, c }) => a.minus(b.minus(c)), 'a-(b-c)'],
    ['a difference less another', ({ a, b, c }) => a.minus(b).minus(c), 'a-b-c'],
    ['nothing less a sum', ({ a, b }) => constant('0').minus(a.plus(b)), '-(a+b)'],
    ['a product of sums', ({ a, b, c }) => a.plus(b).times(c.complement()), '(a+b)*(1-c)'],
    ['a quotient by a product', ({ a, b, c }) => a.dividedBy(b.times(c)), 'a/(b*c)'],
    ['a product by a quotient', ({ a, b, c }) => a.times(b.dividedBy(c)), 'a*(b/c)'],
    ['a unit turned by a factor of one', ({ a }) => a.times(constant('1', 'kg/t')), 'a'],
    ['a count', ({ a }) => a.dividedBy(constant('12')), 'a/12'],
    ['a fixed number with digits after the mark', ({ a }) => a.times(constant('0.9')), 'a*fixed_0.9'],
    ['a power', ({ a }) => a.toThePower(constant('2')), 'a^2'],
    ['a power of a power', ({ a }) => a.toThePower(constant('2')).toThePower(constant('3')), 'step_4^3'],
    ['a power that may be 0^0', ({ a, b }) => a.toThePower(b), 'IF(b=0,1+0*a,a^b)'],
    ['the lesser', ({ a, b }) => a.lesserOf(b), 'MIN(a,b)'],
    ['the greater', ({ a, b }) => a.greaterOf(b), 'MAX(a,b)'],
    ['a choice', ({ a, b, c }) => a.whenAbove(b, c, a), 'IF(a>b,c,a)'],
    ['a limit', ({ a }) => a.within({ above: '0', most: '5' }), 'IF(AND(a<=5+rounding_off,a>0),a,NA())'],
    ['a limit of nothing', ({ a }) => a.within({ least: '0' }), 'IF(a>=-rounding_off,a,NA())'],
    ['a limit that says nothing', ({ a }) => a.within({}), 'a'],
  ])('%s', (_, make, wanted) => {
    expect(formula(make)).toBe(wanted);
  });

  it('a limit on a sum names a cell for the sum, so that it is not written twice', () => {
    expect(formula(({ a, b }) => a.plus(b).within({ least: '0' }))).toMatch(
      /^IF\(step_\d+>=-rounding_off,step_\d+,NA\(\)\)$/u,
    );
  });

  it('a long chain is cut into steps', () => {
    const chain = formula(({ a, b }) => Array.from({ length: 60 }).reduce<Quantity>((sum) => sum.plus(b).times(a), a));

    expect(chain).toMatch(/step_\d+/u);
    expect(chain.length).toBeLessThan(120);
  });
});
