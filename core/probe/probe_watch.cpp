#include "core/probe/probe_watch.h"

namespace panside {

void ProbeWatch::read(const ProbeFile& file) {
    source_.reset(); // lets go of the ports before they are opened anew
    file_ = file;
    if (file.ports.empty())
        return;
    source_ = std::make_unique<ProbeSource>(file, now_);
    connect(source_.get(), &ProbeSource::fact, this, &ProbeWatch::fact);
    connect(source_.get(), &ProbeSource::status, this, &ProbeWatch::status);
    connect(source_.get(), &ProbeSource::heard, this, &ProbeWatch::heard);
    source_->start();
}

} // namespace panside
