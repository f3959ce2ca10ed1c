/** A straight piece of a contour, from one edge of a mesh to another; x counts columns and y rows, from 0. */
export interface ContourPiece {
  readonly from: readonly [x: number, y: number];
  readonly to: readonly [x: number, y: number];
}

/**
 * Where a surface given at the nodes of a grid crosses nothing: straight pieces through each mesh, cut where a straight line between two
 * neighbouring nodes crosses. A mesh with a saddle is joined by the sign at its middle. Meshes with a node that is no number are left out.
 */
export function zeroContour(nodes: readonly (readonly number[])[]): readonly ContourPiece[] {
  const pieces: ContourPiece[] = [];
  for (let y = 0; y + 1 < nodes.length; y += 1) {
    for (let x = 0; x + 1 < (nodes[y]?.length ?? 0); x += 1) pieces.push(...inMesh(nodes, x, y));
  }
  return pieces;
}

type Point = readonly [number, number];

function inMesh(nodes: readonly (readonly number[])[], x: number, y: number): readonly ContourPiece[] {
  const corners: readonly Point[] = [
    [x, y],
    [x + 1, y],
    [x + 1, y + 1],
    [x, y + 1],
  ];
  const values = corners.map(([column, row]) => nodes[row]?.[column] ?? NaN);
  if (!values.every(Number.isFinite)) return [];
  const cuts = corners.flatMap((corner, side): readonly Point[] => {
    const next = (side + 1) % 4;
    const [a, b] = [values[side] ?? NaN, values[next] ?? NaN];
    return a < 0 === b < 0 ? [] : [between(corner, corners[next] ?? corner, a / (a - b))];
  });
  const [first, second, third, fourth] = cuts;
  if (first === undefined || second === undefined) return [];
  if (third === undefined || fourth === undefined) return [{ from: first, to: second }];
  const middle = values.reduce((sum, value) => sum + value, 0) / 4;
  // Cuts stand in order round the mesh: a saddle joins each to its neighbour on the side of the corner that the middle does not share.
  return middle < 0 === (values[0] ?? 0) < 0
    ? [
        { from: first, to: second },
        { from: third, to: fourth },
      ]
    : [
        { from: second, to: third },
        { from: fourth, to: first },
      ];
}

function between([x, y]: Point, [nextX, nextY]: Point, part: number): Point {
  return [x + (nextX - x) * part, y + (nextY - y) * part];
}
