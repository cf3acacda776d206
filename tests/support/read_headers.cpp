// SPDX-License-Identifier: MIT
// Nothing of its own: the headers that come with the command line are what is compiled.
int main() {}
