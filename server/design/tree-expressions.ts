/** The expressions written in a phrase. */
import type { Expression, PlaceSyntax, PointSyntax, Property, StepEnd } from '../../grammar/syntax-tree.ts';

/** Every expression of a property, in order of writing; parts of an expression are not listed apart. */
export function expressionsIn(property: Property): readonly Expression[] {
  switch (property.kind) {
    case 'wood':
    case 'of':
    case 'grid':
    case 'both slants':
    case 'centred':
    case 'edge':
    case 'cut cells':
    case 'path':
      return [];
    case 'grid kind':
      return property.angle ? [property.angle] : [];
    case 'measured':
      return [property.cells, property.over, ...(property.face ? [property.face] : [])];
    case 'section':
      return [property.face, property.depth];
    case 'lengths':
    case 'bevels':
    case 'pin pitches':
      return property.values;
    case 'node':
      return inPlace(property.place);
    case 'piece':
    case 'divider':
      return [...inPlace(property.from), ...inPlace(property.to)];
    case 'fit_order':
      return property.roles.flatMap(({ key }) => (key ? [key] : []));
    case 'part fill':
      return property.tips.map((tip) => tip.angle);
    case 'tip':
      return [property.angle];
    case 'start':
    case 'node at':
      return inPoint(property.at);
    case 'line':
      return inPoint(property.to);
    case 'arc':
      return [...inPoint(property.to), property.radius];
    case 'curve':
      return [...inPoint(property.to), ...property.controls.flatMap(inPoint)];
    case 'circle':
      return [...inPoint(property.at), property.radius];
    case 'rectangle':
      return [property.width, property.height, ...inPoint(property.at)];
    case 'shape':
      return inShape(property.shape);
    case 'panel fill':
      return [...(property.turned ? [property.turned] : []), ...property.tips.map((tip) => tip.angle)];
    default:
      return [property.value];
  }
}

const inPoint = (point: PointSyntax | StepEnd): readonly Expression[] => (point ? [point.x, point.y] : []);

function inPlace(place: PlaceSyntax): readonly Expression[] {
  if (place.kind === 'along') return [place.fraction];
  if (place.kind !== 'between') return [];
  return [...inPlace(place.first), ...inPlace(place.second), ...(place.fraction ? [place.fraction] : [])];
}

function inShape(shape: Extract<Property, { kind: 'shape' }>['shape']): readonly Expression[] {
  if (shape.kind === 'outline') return [];
  return shape.kind === 'hexagon of cells' ? [shape.cells] : [shape.width, shape.height];
}
