// SPDX-License-Identifier: MIT
#include "tests/support/ciede2000.h"

#include <cmath>
#include <numbers>

namespace matwright::test {

namespace {

constexpr double degree = std::numbers::pi / 180;

double linear(double channel) {
    const double c = channel / 255;
    return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
}

double labCurve(double t) {
    return t > 216.0 / 24389 ? std::cbrt(t) : (24389.0 / 27 * t + 16) / 116;
}

// 0 .. 360; 0 for a grey.
double hue(double a, double b) {
    if (a == 0 && b == 0) {
        return 0;
    }
    const double angle = std::atan2(b, a) / degree;
    return angle < 0 ? angle + 360 : angle;
}

double hueStep(double from, double to) {
    const double step = to - from;
    return step > 180 ? step - 360 : step < -180 ? step + 360 : step;
}

double meanHue(double one, double other, bool isGrey) {
    const double sum = one + other;
    if (isGrey) {
        return sum;
    }
    if (std::abs(one - other) <= 180) {
        return sum / 2;
    }
    return sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2;
}

double power7(double value) {
    return std::pow(value, 7);
}

// How far blues and low chromas are stretched: sqrt(C^7 / (C^7 + 25^7)).
double stretch(double chroma) {
    return std::sqrt(power7(chroma) / (power7(chroma) + power7(25)));
}

double hueWeight(double h) {
    return 1 - 0.17 * std::cos((h - 30) * degree) + 0.24 * std::cos(2 * h * degree) +
           0.32 * std::cos((3 * h + 6) * degree) - 0.20 * std::cos((4 * h - 63) * degree);
}

}  // namespace

Lab labOfSrgb(double red, double green, double blue) {
    const double r = linear(red);
    const double g = linear(green);
    const double b = linear(blue);
    const double x = labCurve((0.4124 * r + 0.3576 * g + 0.1805 * b) / 0.9505);
    const double y = labCurve(0.2126 * r + 0.7152 * g + 0.0722 * b);
    const double z = labCurve((0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.089);
    return {116 * y - 16, 500 * (x - y), 200 * (y - z)};
}

double ciede2000(const Lab& one, const Lab& other) {
    const double plainChroma = (std::hypot(one.a, one.b) + std::hypot(other.a, other.b)) / 2;
    const double g = 0.5 * (1 - stretch(plainChroma));
    const double a1 = (1 + g) * one.a;
    const double a2 = (1 + g) * other.a;
    const double c1 = std::hypot(a1, one.b);
    const double c2 = std::hypot(a2, other.b);
    const double h1 = hue(a1, one.b);
    const double h2 = hue(a2, other.b);
    const bool isGrey = c1 * c2 == 0;

    const double dL = other.l - one.l;
    const double dC = c2 - c1;
    const double dH = isGrey ? 0 : 2 * std::sqrt(c1 * c2) * std::sin(hueStep(h1, h2) / 2 * degree);

    const double l = (one.l + other.l) / 2;
    const double c = (c1 + c2) / 2;
    const double h = meanHue(h1, h2, isGrey);
    const double sL = 1 + 0.015 * (l - 50) * (l - 50) / std::sqrt(20 + (l - 50) * (l - 50));
    const double sC = 1 + 0.045 * c;
    const double sH = 1 + 0.015 * c * hueWeight(h);
    const double turn = 30 * std::exp(-((h - 275) / 25) * ((h - 275) / 25));
    const double rT = -std::sin(2 * turn * degree) * 2 * stretch(c);

    const double partL = dL / sL;
    const double partC = dC / sC;
    const double partH = dH / sH;
    return std::sqrt(partL * partL + partC * partC + partH * partH + rT * partC * partH);
}

}  // namespace matwright::test
