// SPDX-License-Identifier: MIT
#include "app/window/start.h"

int main(int argc, char** argv) {
    return matwright::app::startDesktop(argc, argv);
}
