import type { Move } from './move';

/** The move made by a hand whose rod points so much higher than is said, degrees. */
export function raisedMove(move: Move, by_deg: number): Move {
  switch (move.kind) {
    case 'lift':
      return { ...move, from_deg: move.from_deg + by_deg, to_deg: move.to_deg + by_deg };
    case 'sweep':
      return { ...move, elevation_deg: move.elevation_deg + by_deg };
    case 'rod_input': {
      const { elevation_deg: said } = move;
      const elevation_deg = Array.isArray(said) ? said.map((one) => one + by_deg) : said + by_deg;
      return { ...move, elevation_deg };
    }
    case 'sequence':
      return { ...move, moves: move.moves.map((one) => raisedMove(one as Move, by_deg)) } as Move;
    default:
      return move;
  }
}
