import loadHighs, { type InitOptions } from 'highs';
import { type LinearSolver, linearText } from './linear-program.ts';

/**
 * The door to HiGHS (MIT licence), a solver of linear programs compiled to WebAssembly. It is large, so that only those who solve load it: the
 * terminal and a worker of its own. `where` hands over the compiled code where it does not lie beside the program.
 */
export async function highsSolver(where: InitOptions = {}): Promise<LinearSolver> {
  const highs = await loadHighs(where);
  return (program) => {
    const { Status, Columns } = highs.solve(linearText(program));
    if (Status === 'Optimal') {
      const amounts = program.costs.map((_, place) => {
        const column = Columns[`a${String(place)}`];
        return column !== undefined && 'Primal' in column ? column.Primal : 0;
      });
      return { kind: 'solved', amounts };
    }
    return Status === 'Infeasible' ? { kind: 'impossible' } : { kind: 'unsolved', status: Status };
  };
}
