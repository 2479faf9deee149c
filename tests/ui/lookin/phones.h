#pragma once
// Phones that look in, as plain sockets in a thread of their own: each reads whatever comes, as fast as it comes.
#include <algorithm>
#include <arpa/inet.h>
#include <atomic>
#include <netinet/in.h>
#include <poll.h>
#include <string>
#include <string_view>
#include <sys/socket.h>
#include <thread>
#include <unistd.h>
#include <vector>

namespace panside {

class Phones {
public:
    // On 127.0.0.1; `path`: "/KEY/".
    Phones(std::size_t count, int port, const std::string& path) : heard_(count), rest_(count) {
        for (std::size_t i = 0; i < count; ++i)
            sockets_.push_back({connected(port, path + "stream"), POLLIN, 0});
        reader_ = std::jthread{[this](const std::stop_token& stop) {
            while (!stop.stop_requested())
                read();
        }};
    }
    ~Phones() {
        reader_.request_stop();
        reader_.join();
        for (const pollfd& socket : sockets_)
            close(socket.fd);
    }
    Phones(const Phones&) = delete;
    Phones& operator=(const Phones&) = delete;

    // How many pictures came to the phone that had the fewest.
    int fewest() const { return std::ranges::min(counts()); }

private:
    static int connected(int port, const std::string& path) {
        const int socket = ::socket(AF_INET, SOCK_STREAM | SOCK_CLOEXEC, 0);
        sockaddr_in address{};
        address.sin_family = AF_INET;
        address.sin_port = htons(static_cast<std::uint16_t>(port));
        address.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
        const std::string request = "GET " + path + " HTTP/1.1\r\nHost: sugarhouse\r\n\r\n";
        if (connect(socket, reinterpret_cast<const sockaddr*>(&address), sizeof address) == 0) [[maybe_unused]]
            const auto sent = send(socket, request.data(), request.size(), MSG_NOSIGNAL);
        return socket;
    }
    void read() {
        constexpr std::string_view mark = "\ndata: {\"at\""; // of a picture; a chart begins otherwise
        if (poll(sockets_.data(), sockets_.size(), 20) <= 0)
            return;
        for (std::size_t i = 0; i < sockets_.size(); ++i) {
            char piece[65536];
            if (!(sockets_[i].revents & POLLIN))
                continue;
            const auto size = recv(sockets_[i].fd, piece, sizeof piece, MSG_DONTWAIT);
            if (size <= 0) {
                sockets_[i].events = 0; // closed: it hears no more
                continue;
            }
            std::string& said = rest_[i]; // a mark may come in two pieces
            said.append(piece, static_cast<std::size_t>(size));
            for (auto at = said.find(mark); at != said.npos; at = said.find(mark, at + 1))
                ++heard_[i];
            said.erase(0, said.size() - std::min(said.size(), mark.size() - 1));
        }
    }
    std::vector<int> counts() const { return {heard_.begin(), heard_.end()}; }

    std::vector<pollfd> sockets_;
    std::vector<std::atomic<int>> heard_;
    std::vector<std::string> rest_;
    std::jthread reader_;
};

} // namespace panside
