#pragma once
namespace panside {

// How a key looks: as one of many; as the one that is called for (at most one a screen); as one for a fact that can
// still be told while nobody asks for it.
enum class KeyShape { plain, due, resting };

} // namespace panside
