// SPDX-License-Identifier: MIT
#pragma once

#include <unistd.h>

#include <utility>

namespace matwright {

// Owns an open file of the system; below zero is none.
class FileDescriptor {
  public:
    explicit FileDescriptor(int number = -1) : m_number(number) {}
    ~FileDescriptor() { close(); }
    FileDescriptor(FileDescriptor&& other) noexcept : m_number(std::exchange(other.m_number, -1)) {}
    FileDescriptor& operator=(FileDescriptor&& other) noexcept {
        if (this != &other) {
            close();
            m_number = std::exchange(other.m_number, -1);
        }
        return *this;
    }

    bool isOpen() const { return m_number >= 0; }
    int number() const { return m_number; }
    // Gives it up unclosed.
    int release() { return std::exchange(m_number, -1); }
    // False where the system reports a late write error here (network folders do).
    bool close() {
        const int number = release();
        return number < 0 || ::close(number) == 0;
    }

  private:
    int m_number;
};

}  // namespace matwright
