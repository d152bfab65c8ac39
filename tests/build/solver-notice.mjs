// @ts-check
/**
 * What the solver's package carries in its compiled file and does not name: it comes with the licence of HiGHS alone. By the sources of HiGHS
 * (its list of notices, the licences of IPX, BASICLU and cuPDLP-C in their own repositories) and the package's build script, which leaves
 * zlib out; of what the compiler adds (musl, Emscripten, LLVM) from memory.
 */

/** The package that this is about. */
export const SOLVER = 'highs';

/** Words in the compiled file by which a part is seen to be in it, or to have been left out; `tests/build/notices.test.ts` looks for them. */
export const SIGNS = {
  inside: ['N3ipx', 'basiclu_factorize', 'PDLP'],
  /** Without zlib there is no zstr; METIS, AMD and RCM are in a library beside it, which is not carried: HiPO, which needs it, is refused. */
  leftOut: ['HiGHS build without zlib support', 'libhighs_extras'],
};

export const SOLVER_PARTS = `Compiled into ${SOLVER} above, besides HiGHS itself:

IPX, Copyright (c) 2018-2020 ERGO-Code. Used in Ironsift under the MIT license.
BASICLU, Copyright (c) 2020 ERGO (MIT)
cuPDLP-C, Copyright (c) 2023 COPT-Public (MIT)
Emscripten, Copyright (c) 2010-2014 Emscripten authors (MIT)
musl, Copyright (c) 2005-2020 Rich Felker, et al. (MIT)
pdqsort, Copyright (c) 2021 Orson Peters (zlib, below)
libc++, libc++abi and compiler-rt of the LLVM project (Apache-2.0 with LLVM exceptions, which asks for no notice in compiled form)

The text of the MIT licence is the one that stands with ${SOLVER}; it holds for each of these with its own line of copyright.

zlib licence: This software is provided 'as-is', without any express or implied warranty. In no event will the authors be held liable for
any damages arising from the use of this software. Permission is granted to anyone to use this software for any purpose, including
commercial applications, and to alter it and redistribute it freely, subject to the following restrictions:
1. The origin of this software must not be misrepresented; you must not claim that you wrote the original software. If you use this
software in a product, an acknowledgment in the product documentation would be appreciated but is not required.
2. Altered source versions must be plainly marked as such, and must not be misrepresented as being the original software.
3. This notice may not be removed or altered from any source distribution.
`;
