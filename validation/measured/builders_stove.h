#pragma once

#include "validation/measured/stove_runs.h"

namespace drawwell {

/// The stove that stands in where a builder's reading names an eight-inch system and little else:
/// bore 200 mm, a drum of 210 l, riser of light board, 5 m of bare 200 mm flue indoors, feed kept
/// full of 50 mm sticks for three hours (three more each twelve minutes, as soon as they fit).
/// Common practice, no source, where a reading says nothing. The workshop sample was tried first:
/// fed for a long evening's warmth it burns far less wood than such readings tell of. This stove
/// was written then, for all of them at once, and has not been adjusted since.
Setup builders_stove();

/// The same with half the wood: three sticks each 24 minutes.
Setup builders_stove_fed_sparingly();

/// A figure that hangs on how much wood was burned, which nobody wrote down: from sparingly to
/// fully fed, and what inputs move either by.
Figure between(const Figure& sparingly, const Figure& fully);

/// The elbow stove of the pan-gap tests: bore 4.5 in, riser's top 12 in over the floor, an
/// insulated sheet chamber, no barrel, no flue, 5 kW of wood. What the source leaves out is our
/// choice.
Setup elbow_stove();

}  // namespace drawwell
