/** A piece fits when it is longer than the room by no more than this part of the board: far below any saw, far above the last bit of a cosine. */
export const TOLERANCE = 1e-9;
