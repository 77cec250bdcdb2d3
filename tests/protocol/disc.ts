/** A round panel whose counts were worked out independently: 138 triangles met, 342 arms to make, 276 whole, 66 trimmed. */
export const disc = `title "Disc"
units mm
let side_length = 40

strip ash { wood white_ash  section face 3 depth 10 }
strip bass { wood basswood  section face 3 depth 10 }

grid mesh {
  three_way
  side side_length
  of ash
}

motif hemp for triangle {
  node hub at incentre
  piece arm from corner to hub, every corner
}

outline round { circle at 0, 0 radius 150mm }

panel window {
  grid mesh
  shape round
  edge sawn
  fill triangle with hemp of bass
  copies 2
}
`;
