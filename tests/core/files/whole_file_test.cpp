#include "core/files/text_file.h"
#include "core/files/whole_file.h"

#include <gtest/gtest.h>

#include <csignal>
#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

namespace panside {
namespace {

namespace fs = std::filesystem;
class WholeFiles : public testing::Test {
protected:
    WholeFiles() {
        std::string name = (fs::temp_directory_path() / "panside-files-XXXXXX").string();
        folder_ = ::mkdtemp(name.data());
    }
    ~WholeFiles() override {
        std::error_code ignored;
        fs::remove_all(folder_, ignored);
    }
    fs::path folder_;
    fs::path place() const { return folder_ / "report.csv"; }
};

std::string fileText(const fs::path& place) { return readText(place.string()); }

mode_t rightsOf(const fs::path& place) {
    struct stat info {};
    ::stat(place.c_str(), &info);
    return info.st_mode & 0777;
}

std::size_t filesIn(const fs::path& folder) {
    return static_cast<std::size_t>(std::distance(fs::directory_iterator{folder}, {}));
}

TEST_F(WholeFiles, AreWrittenWholeInAnyPieces) {
    for (const std::size_t size : {0U, 1U, 65535U, 65536U, 65537U, 300000U}) {
        std::string text;
        for (std::size_t i = 0; i < size; ++i)
            text += static_cast<char>('a' + i * 7 % 26);
        WholeFile file{place()};
        for (std::size_t at = 0; at < size; at += 7001)
            file.add(std::string_view{text}.substr(at, 7001));
        EXPECT_FALSE(fs::exists(place())) << "before it is finished it is not there";
        file.finish();
        EXPECT_TRUE(fileText(place()) == text) << size;
        fs::remove(place());
    }
    EXPECT_EQ(filesIn(folder_), 0U);
}

TEST_F(WholeFiles, NotFinishedLeaveWhatWasThere) {
    writeWhole(place(), "old");
    {
        WholeFile file{place()};
        file.add("new");
    }
    EXPECT_EQ(fileText(place()), "old");
    EXPECT_EQ(filesIn(folder_), 1U);
    EXPECT_THROW(writeWhole(folder_ / "none" / "x", "new"), fs::filesystem_error);
    EXPECT_THROW(writeWhole(folder_, "new"), fs::filesystem_error);
}

// The system lets no file grow past so many bytes: as a full disk, in the middle of the write.
TEST_F(WholeFiles, ADiskThatTakesNoMoreLeavesTheOldOne) {
    writeWhole(place(), "old");
    const pid_t child = ::fork();
    if (child == 0) {
        std::signal(SIGXFSZ, SIG_IGN);
        const rlimit limit{100000, 100000};
        ::setrlimit(RLIMIT_FSIZE, &limit);
        try {
            writeWhole(place(), std::string(200000, 'n'));
            ::_exit(0);
        } catch (const fs::filesystem_error&) {
            ::_exit(7);
        }
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    EXPECT_EQ(WEXITSTATUS(status), 7);
    EXPECT_EQ(fileText(place()), "old");
    EXPECT_EQ(filesIn(folder_), 1U);
}

TEST_F(WholeFiles, AreNotWrittenThroughALink) {
    writeWhole(folder_ / "other", "theirs");
    fs::create_symlink(folder_ / "other", place());
    writeWhole(place(), "mine");
    EXPECT_EQ(fileText(folder_ / "other"), "theirs");
    EXPECT_EQ(fileText(place()), "mine");
    EXPECT_FALSE(fs::is_symlink(place()));
}

TEST_F(WholeFiles, MayBeTheirUsersAlone) {
    writeWhole(place(), "x", WholeFile::For::userAlone);
    EXPECT_EQ(rightsOf(place()), 0600U);
    writeWhole(place(), "x");
    EXPECT_EQ(rightsOf(place()), 0644U);
}

TEST_F(WholeFiles, APipeIsWrittenAsItComes) {
    ASSERT_EQ(::mkfifo(place().c_str(), 0600), 0);
    const pid_t child = ::fork();
    if (child == 0) {
        writeWhole(place(), "through");
        ::_exit(0);
    }
    EXPECT_EQ(fileText(place()), "through");
    ::waitpid(child, nullptr, 0);
    EXPECT_TRUE(fs::is_fifo(place()));
}

} // namespace
} // namespace panside
